/** A number, a text, or '' for nothing: all that a table's cell may hold. */
export type TableCell = number | string | boolean;

/** A heading row and the rows below it, each as long as the heading. */
export interface Table {
  readonly heading: readonly string[];
  readonly rows: readonly (readonly TableCell[])[];
}
