import type { BundledFunction } from '../../app/calls/bundledFunction.js';
import { patchOds } from '../patch/patchOds.js';
import { patchXlsx } from '../patch/patchXlsx.js';
import { readBook } from '../read/readBook.js';
import { FileProblem } from '../zip/fileProblem.js';
import type { CellChange } from './cellChange.js';
import { evaluatedBook } from './evaluatedBook.js';
import { plannedWrites } from './plannedWrites.js';
import { recalcRemarks } from '../../app/cli/recalcRemarks.js';

export type { CellChange } from './cellChange.js';

interface RecalculationTerms {
  /** What NOW() gives. [serial day from 1900] */
  readonly now: number;
}

interface Recalculated {
  /** The same bytes where nothing changed. */
  readonly bytes: Uint8Array;
  readonly changes: readonly CellChange[];
  /** How many formulas call functions of ours. */
  readonly formulas: number;
  readonly remarks: readonly string[];
}

/** A copy of a workbook whose formulas with functions of ours hold fresh values; nothing else in it differs. */
export async function recalculated(
  bytes: Uint8Array,
  name: string,
  bundle: readonly BundledFunction[],
  terms: RecalculationTerms,
): Promise<Recalculated> {
  const book = readBook(bytes, name);
  if (book.kind === 'csv') {
    const is = /\.(?:xlsx|xlsm|ods)$/i.test(name)
      ? 'the file holds plain text and no workbook, whatever its name says'
      : 'a csv file stores no formulas';
    throw new FileProblem(`${is}; save the workbook as .xlsx or .ods and give that`);
  }
  const answers = await evaluatedBook(book, bundle, terms);
  const { writes, changes } = plannedWrites(book, answers);
  const patched =
    writes.length === 0 ? bytes : book.kind === 'ods' ? patchOds(bytes, writes) : patchXlsx(bytes, writes);
  return {
    bytes: patched,
    changes,
    formulas: answers.filter(({ formula }) => formula !== '').length,
    remarks: [...book.remarks, ...recalcRemarks({ book, answers, changes, now: terms.now })],
  };
}
