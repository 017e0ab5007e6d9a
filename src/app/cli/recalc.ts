import { basename } from 'node:path';
import { addressOf, type CellChange, FileProblem, recalculated } from '../../sheet/index.js';
import { inputFiles } from './files/inputFiles.js';
import { readWhole } from './files/readWhole.js';
import { writeWhole } from './files/writeWhole.js';
import type { BundledFunction } from '../calls/bundledFunction.js';
import { outsideFunctions } from '../calls/outsideFunctions.js';
import { oneLine, printable } from './printable.js';
import { recalcTargets } from './targets.js';
import { exitCode, type ExitCode, type Terminal } from './terminal.js';
import { cellText } from './textTable.js';

interface RecalcTerms {
  readonly functions: readonly BundledFunction[];
  readonly out: string;
  readonly replace?: boolean;
  /** [serial day] */
  readonly now: number;
}

/** `lazaret recalc FILE… --out OUT`: copies in which the cells with QT functions are recalculated and nothing else differs. */
export async function recalc(paths: readonly string[], terms: RecalcTerms, terminal: Terminal): Promise<ExitCode> {
  const files = workbooksAt(paths);
  const targets = recalcTargets(files, { paths, out: terms.out });
  const bar = terminal.progress(files.length);
  const texts: string[] = [];
  const problems: string[] = [];
  for (const [i, file] of files.entries()) {
    try {
      texts.push(await recalcOne(file, targets[i] ?? terms.out, files, terms));
    } catch (fault) {
      if (!(fault instanceof FileProblem)) throw fault;
      problems.push(`${printable(file)}: ${printable(fault.message)}`);
    }
    bar.step(basename(file));
  }
  bar.end();
  if (texts.length > 0) terminal.out(texts.join('\n\n'));
  for (const problem of problems) terminal.err(problem);
  return problems.length > 0 ? exitCode.refused : exitCode.done;
}

async function recalcOne(file: string, target: string, inputs: readonly string[], terms: RecalcTerms): Promise<string> {
  const { functions, now, replace = false } = terms;
  const outside = outsideFunctions(functions);
  const { bytes, changes, formulas, remarks } = await recalculated(readWhole(file), basename(file), outside, { now });
  writeWhole(target, bytes, { inputs, replace });
  const ours = `${formulas} ${formulas === 1 ? 'QT formula' : 'QT formulas'}`;
  const changed =
    changes.length === 0 ? 'nothing changed' : `${changes.length} ${changes.length === 1 ? 'cell' : 'cells'} changed`;
  const head = `${printable(file)} -> ${printable(target)}: ${ours}, ${changed}`;
  return [head, ...changes.map(changeLine), ...remarks.map((remark) => `  ${oneLine(remark)}`)].join('\n');
}

function changeLine({ sheet, row, column, was, is, formula, reason, isTime }: CellChange): string {
  const from = formula === '' ? '' : `  ${oneLine(formula)}`;
  const why = reason === undefined || reason === '' ? '' : `  (${oneLine(reason)})`;
  const time = isTime === true ? ` (${cellText(is, true)})` : '';
  return `  ${oneLine(sheet)}!${addressOf(row, column)}: ${value(was)} -> ${value(is)}${time}${why}${from}`;
}

function value(cell: CellChange['is']): string {
  const text = typeof cell === 'string' ? `"${cellText(cell, false)}"` : cellText(cell, false);
  return cell === null ? 'empty' : text;
}

/** A folder stands for the workbooks in it: a csv file in it stores no formulas. One that is named itself is refused with that reason. */
function workbooksAt(paths: readonly string[]): string[] {
  const files = inputFiles(paths).filter((file) => paths.includes(file) || !/\.(?:csv|tsv)$/i.test(file));
  if (files.length === 0) throw new FileProblem(`${paths.join(', ')} contains no .xlsx, .xlsm or .ods file`);
  return files;
}
