import type { CellRange } from '../../../sheet/index.js';
import type { Look, tabs, Tone } from './looks.js';

/** A workbook as plain data, before it is a Book. */
export interface TemplatePlan {
  readonly title: string;
  readonly subject: string;
  readonly description: string;
  readonly sheets: readonly SheetPlan[];
  readonly names: readonly NamePlan[];
  /** Rows and columns are fitted to what formulas answer: see `fittedPlan`. */
  readonly isFitted?: boolean;
}

/** A name that formulas use for cells, such as `Card` for `Card!$A$5:$B$24`. */
interface NamePlan {
  readonly name: string;
  readonly cells: string;
  readonly comment: string;
}

/** A sheet as it is laid out. Rows and columns count from 0. */
export interface SheetPlan extends Required<Omit<Part, 'widths' | 'table'>> {
  readonly name: string;
  readonly tab: keyof typeof tabs;
  /** Column widths in characters, from column A on. */
  readonly widths: readonly number[];
  readonly frozen?: { readonly rows: number; readonly columns?: number };
  readonly table?: { readonly name: string; readonly range: CellRange };
  readonly page: PagePlan;
}

/** Something on a sheet: a line, a form, a table, a chart. A sheet is made of such parts. */
export interface Part {
  readonly cells?: readonly PlannedCell[];
  /** Of looks and formats given for one cell the last decides. */
  readonly areas?: readonly Area[];
  /** What formulas call cells by: `{volume}` is written as the address of the place `volume`, see `withPlaces`. */
  readonly places?: Readonly<Record<string, CellRange>>;
  readonly widths?: readonly { readonly column: number; readonly width: number; readonly isUsual?: boolean }[];
  /** In points; rows that are not named fit their text. */
  readonly heights?: readonly { readonly first: number; readonly last: number; readonly height: number }[];
  readonly merged?: readonly CellRange[];
  /** A text that links to another sheet. */
  readonly links?: readonly { readonly row: number; readonly column: number; readonly to: string }[];
  readonly table?: { readonly name: string; readonly range: CellRange };
  readonly validations?: readonly Validation[];
  readonly conditions?: readonly Condition[];
  readonly charts?: readonly ChartPlan[];
}

/** A text that begins with "=" is a formula; any other text is text, also when it looks like a number; null is nothing. */
export type Content = number | string | null;

export interface PlannedCell {
  readonly row: number;
  readonly column: number;
  readonly content: number | string;
  /** Its formula fills other cells, as those of our functions may. */
  readonly isArray?: boolean;
  /** Its formula is refused on purpose, to show what a refusal looks like. */
  readonly isRefused?: boolean;
}

interface Area {
  readonly range: CellRange;
  readonly look?: Look;
  readonly format?: string;
}

interface PagePlan {
  readonly orientation: 'portrait' | 'landscape';
  /** The range that is printed; if left out, everything that is filled. */
  readonly area?: CellRange;
  /** Heading rows repeated on every page. */
  readonly repeated?: { readonly first: number; readonly last: number };
  /** Made smaller until it fits on one page. */
  readonly onOnePage?: boolean;
}

/** What a cell takes, and what is said before and after something else is written into it. */
export interface Validation extends Rule {
  readonly range: CellRange;
  readonly title: string;
  readonly prompt: string;
}

export interface Rule {
  readonly allows:
    | { readonly kind: 'list'; readonly values: readonly string[] }
    | { readonly kind: 'listFrom'; readonly cells: string }
    | { readonly kind: 'decimal' | 'whole' | 'date'; readonly from: number; readonly to: number }
    | { readonly kind: 'formula'; readonly formula: string }
    | { readonly kind: 'anything' };
  readonly refusal: string;
}

/** A look that a cell takes on where a formula is true; the first that is true decides. */
interface Condition {
  readonly range: CellRange;
  readonly rules: readonly ToneRule[];
}

export interface ToneRule {
  readonly when: string;
  readonly tone: Tone;
}

/** A chart as plain data. */
export interface ChartPlan {
  /** The cell of its upper left corner. */
  readonly at: Corner;
  readonly kind: 'scatter' | 'columns';
  /** In pixels. */
  readonly size: { readonly width: number; readonly height: number };
  readonly name: string;
  readonly title: string;
  /** The text alternative. */
  readonly alt: string;
  readonly across: ChartAxis;
  readonly up: ChartAxis;
  readonly series: readonly ChartSeries[];
}

export interface Corner {
  readonly row: number;
  readonly column: number;
}

export interface ChartAxis {
  readonly title: string;
  readonly format: string;
  readonly from?: number;
}

/** Points of one kind. Cells are places with their sheet, such as `{$Chart!drawn.When$}`. */
export interface ChartSeries {
  readonly name: string;
  readonly across: string;
  readonly up: string;
  readonly draws: 'marks' | 'line' | 'thinLine' | 'limit' | 'columns';
}
