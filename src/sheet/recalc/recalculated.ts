import type { OutsideFunctions } from '../formula/outsideFunctions.js';
import { patchOds } from '../patch/patchOds.js';
import { patchXlsx } from '../patch/patchXlsx.js';
import { readBook } from '../read/readBook.js';
import { FileProblem } from '../zip/fileProblem.js';
import { evaluatedBook } from './evaluatedBook.js';
import { plannedWrites, type CellChange } from './plannedWrites.js';
import { recalcRemarks } from './recalcRemarks.js';

interface RecalculationTerms {
  /** What NOW() gives. [serial day from 1900] */
  readonly now: number;
}

interface Recalculated {
  /** The same bytes where nothing changed. */
  readonly bytes: Uint8Array;
  readonly changes: readonly CellChange[];
  /** How many formulas call functions from outside. */
  readonly formulas: number;
  readonly remarks: readonly string[];
}

/** A copy of a workbook whose formulas with functions from outside hold fresh values; nothing else in it differs. */
export async function recalculated(
  bytes: Uint8Array,
  name: string,
  outside: OutsideFunctions,
  terms: RecalculationTerms,
): Promise<Recalculated> {
  const book = readBook(bytes, name);
  if (book.kind === 'csv') {
    const is = /\.(?:xlsx|xlsm|ods)$/i.test(name)
      ? 'the file holds plain text and no workbook, whatever its name says'
      : 'a csv file stores no formulas';
    throw new FileProblem(`${is}; save the workbook as .xlsx or .ods and give that`);
  }
  const answers = await evaluatedBook(book, outside, terms);
  const { writes, changes } = plannedWrites(book, answers);
  const patched =
    writes.length === 0 ? bytes : book.kind === 'ods' ? patchOds(bytes, writes, outside) : patchXlsx(bytes, writes);
  return {
    bytes: patched,
    changes,
    formulas: answers.filter(({ formula }) => formula !== '').length,
    remarks: [...book.remarks, ...recalcRemarks({ book, outside, answers, changes, now: terms.now })],
  };
}
