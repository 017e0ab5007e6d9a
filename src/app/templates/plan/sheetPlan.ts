import type { Part, SheetPlan } from './templatePlan.js';

export interface SheetTerms extends Pick<SheetPlan, 'name' | 'tab' | 'frozen' | 'page'> {
  readonly parts: readonly Part[];
  /** Widths of the columns from A on, where parts have none of their own. */
  readonly widths?: readonly number[];
  /** Of columns between parts. */
  readonly gap?: number;
  /** If widths are not in characters: what makes characters of them. */
  readonly characters?: (width: number) => number;
}

/** A sheet made of its parts, each at the place it states. */
export function sheetPlan({ parts, widths, gap, characters, ...sheet }: SheetTerms): SheetPlan {
  try {
    const all = joined(parts);
    return { ...sheet, ...all, widths: widthsOf(all.widths, { widths, gap, characters }) };
  } catch (fault) {
    throw new Error(`${sheet.name}: ${fault instanceof Error ? fault.message : String(fault)}`);
  }
}

/** Several parts as one. */
export function joined(parts: readonly Part[]): Required<Omit<Part, 'table'>> & Pick<Part, 'table'> {
  const [table, ...others] = parts.flatMap((part) => part.table ?? []);
  if (others.length > 0) throw new Error('more than one named table');
  const places = parts.flatMap((part) => Object.entries(part.places ?? {}));
  const twice = places.find(([key], i) => places.findIndex(([other]) => other === key) < i);
  if (twice !== undefined) throw new Error(`two places are called ${twice[0]}`);
  return {
    cells: parts.flatMap(({ cells = [] }) => cells),
    areas: parts.flatMap(({ areas = [] }) => areas),
    places: Object.fromEntries(places),
    widths: parts.flatMap(({ widths = [] }) => widths),
    heights: parts.flatMap(({ heights = [] }) => heights),
    merged: parts.flatMap(({ merged = [] }) => merged),
    links: parts.flatMap(({ links = [] }) => links),
    ...(table === undefined ? {} : { table }),
    validations: parts.flatMap(({ validations = [] }) => validations),
    conditions: parts.flatMap(({ conditions = [] }) => conditions),
    charts: parts.flatMap(({ charts = [] }) => charts),
  };
}

/** An empty column between parts. */
const narrow = 3;

type Given = { readonly [K in 'widths' | 'gap' | 'characters']: SheetTerms[K] | undefined };

/** Of the widths that parts ask for in one column the widest; a usual one only where no other was asked for. */
function widthsOf(
  asked: NonNullable<Part['widths']>,
  { widths = [], gap = narrow, characters = (w) => w }: Given,
): number[] {
  const stated: (number | undefined)[] = widths.map(characters);
  const usual: (number | undefined)[] = [];
  for (const { column, width, isUsual = false } of asked) {
    const [list, wide] = isUsual ? [usual, width] : [stated, characters(width)];
    list[column] = Math.max(list[column] ?? 0, wide);
  }
  const count = Math.max(stated.length, usual.length);
  return Array.from({ length: count }, (_, column) => stated[column] ?? usual[column] ?? characters(gap));
}
