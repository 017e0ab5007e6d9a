import { line, type SheetPlan, sheetPlan, type SheetTerms } from '../plan/index.js';

/** Pixels of a character and of the margins of a column: a little less than files count, so that there is room. */
const [digit, margins] = [7, 5];

interface DemoTerms extends Pick<SheetTerms, 'name' | 'parts'> {
  /** In pixels, as all widths of the demo. */
  readonly widths?: readonly number[];
  readonly gap?: number;
  readonly title?: string;
  readonly frozenRows?: number;
  /** People write their rows into it. */
  readonly isLog?: boolean;
}

/** A sheet of the demo: its title in the first row; all are wide. */
export function demoSheet({ name, parts, title, frozenRows = 1, isLog = false, ...terms }: DemoTerms): SheetPlan {
  const sheet = sheetPlan({
    ...terms,
    name,
    tab: isLog ? 'write' : 'answer',
    characters: (pixels) => (pixels - margins) / digit,
    frozen: { rows: frozenRows },
    page: { orientation: 'landscape', repeated: { first: 0, last: frozenRows - 1 } },
    parts,
  });
  if (title === undefined) return sheet;
  const { cells = [], areas = [] } = line('A1', title, 'lineTitle', { columns: sheet.widths.length });
  return { ...sheet, cells: [...cells, ...sheet.cells], areas: [...areas, ...sheet.areas] };
}
