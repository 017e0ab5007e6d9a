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

/** A sheet made of its parts, each of which stands where it says. */
export function sheetPlan({ name, tab, frozen, page, parts, ...terms }: SheetTerms): SheetPlan {
  const all = <K extends keyof Part>(key: K): NonNullable<Part[K]>[] =>
    parts.flatMap((part) => (part[key] === undefined ? [] : [part[key] as NonNullable<Part[K]>]));
  const [table, ...others] = all('table');
  if (others.length > 0) throw new Error(`${name} has more than one named table`);
  return {
    name,
    tab,
    ...(frozen === undefined ? {} : { frozen }),
    page,
    widths: widthsOf(terms, all('widths').flat()),
    cells: all('cells').flat(),
    areas: all('areas').flat(),
    places: placesOf(name, all('places')),
    heights: all('heights').flat(),
    merged: all('merged').flat(),
    links: all('links').flat(),
    ...(table === undefined ? {} : { table }),
    validations: all('validations').flat(),
    conditions: all('conditions').flat(),
    charts: all('charts').flat(),
  };
}

function placesOf(sheet: string, given: readonly NonNullable<Part['places']>[]): SheetPlan['places'] {
  const entries = given.flatMap((places) => Object.entries(places));
  const twice = entries.find(([key], i) => entries.findIndex(([other]) => other === key) < i);
  if (twice !== undefined) throw new Error(`${sheet} has two places called ${twice[0]}`);
  return Object.fromEntries(entries);
}

/** Of the widths that parts ask for in one column the widest; a usual one only where no other was asked for. */
function widthsOf(
  { widths = [], gap = narrowGap, characters = (width) => width }: Pick<SheetTerms, 'widths' | 'gap' | 'characters'>,
  asked: readonly NonNullable<Part['widths']>[number][],
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

const narrowGap = 3;
