/** A cell that holds an error of the spreadsheet, such as #N/A. */
interface CellError {
  readonly error: string;
}

/** Several cells given where one value is wanted. */
interface CellBlock {
  readonly cells: number;
}

/** What one argument or one cell of a range may hold, whatever the host. */
export type Cell = number | string | boolean | null | CellError | CellBlock;

/** Empty, or nothing but spaces. */
export function isBlank(cell: Cell): boolean {
  return cell === null || (typeof cell === 'string' && cell.trim() === '');
}
