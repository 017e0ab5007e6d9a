import { rangeIn, type CellRange } from '../address/cellRange.js';
import { FileProblem } from '../zip/fileProblem.js';

/** A range written in a part of a file, which may be anything. */
export function addressIn(part: string, address: string): CellRange {
  const range = rangeIn(address);
  if (range === undefined) {
    throw new FileProblem(
      `${part} in the file has a cell at "${address}", which is no address like B2: save the file anew with your spreadsheet program.`,
    );
  }
  return range;
}
