/** One sheet of the demo workbook as plain data, for whatever writes it: the page or a workbook file. */
export interface SheetPlan {
  readonly name: string;
  /** Column widths in pixels, from column A on. */
  readonly widths: readonly number[];
  readonly rows: number;
  readonly frozenRows: number;
  readonly blocks: readonly Block[];
  readonly looks: readonly { readonly range: string; readonly look: Look }[];
  readonly formats: readonly { readonly range: string; readonly format: NumberFormat }[];
  readonly merged: readonly string[];
}

/** Contents from one cell to the right and down. */
export interface Block {
  readonly at: string;
  readonly cells: readonly (readonly PlanCell[])[];
}

/** A text that begins with "=" is a formula; any other text is text, also when it looks like a number; null is nothing. */
export type PlanCell = number | string | null;

export type Look =
  | 'title'
  | 'note'
  | 'section'
  | 'heading'
  | 'numberHeading'
  | 'label'
  | 'input'
  | 'inputText'
  | 'answer'
  | 'spill'
  | 'spillText'
  | 'unit'
  | 'log'
  | 'refusal'
  | 'wrapped'
  | 'caption'
  | 'warning';

export type NumberFormat =
  | 'yyyy-mm-dd hh:mm'
  | 'yyyy-mm-dd'
  | '0'
  | '0.0'
  | '0.00'
  | '0.000'
  | '0.0000'
  | '#,##0.0####'
  | '0%'
  | '0.0%'
  | '[>=0.995]"over 99%";0%';
