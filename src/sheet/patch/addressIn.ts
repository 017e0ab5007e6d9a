import { cellRange, type CellRange } from '../address/cellRange.js';
import { FileProblem } from '../zip/fileProblem.js';

/** A range written in a part of a file, which may be anything. */
export function addressIn(part: string, address: string): CellRange {
  if (!/^[A-Z]{1,3}[1-9]\d{0,6}(:[A-Z]{1,3}[1-9]\d{0,6})?$/.test(address)) {
    throw new FileProblem(
      `${part} in the file has a cell at "${address}", which is no address like B2: save the file anew with your spreadsheet program.`,
    );
  }
  return cellRange(address);
}
