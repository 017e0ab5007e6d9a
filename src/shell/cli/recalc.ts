import { mkdirSync } from 'node:fs';
import { basename, join } from 'node:path';
import { addressOf } from '../address/addressOf.js';
import { fileAt } from '../files/fileAt.js';
import { inputFiles } from '../files/inputFiles.js';
import { readWhole } from '../files/readWhole.js';
import { writeWhole } from '../files/writeWhole.js';
import type { BundledFunction } from '../host/bundledFunction.js';
import { recalculated, type CellChange } from '../recalc/recalculated.js';
import { FileProblem } from '../zip/fileProblem.js';
import { cellText } from './cellText.js';
import { printable } from './printable.js';
import type { Progress } from './progress.js';
import { exitCode, type ExitCode, type Terminal } from './terminal.js';

export interface RecalcTerms {
  readonly functions: readonly BundledFunction[];
  readonly out: string;
  readonly replace: boolean;
  /** [serial day] */
  readonly now: number;
  progress(files: number): Progress;
}

/** `lazaret recalc FILE… --out OUT`: copies whose cells with our functions hold fresh values, and nothing else differs. */
export async function recalc(paths: readonly string[], terms: RecalcTerms, terminal: Terminal): Promise<ExitCode> {
  const files = inputFiles(paths);
  const targets = targetsOf(files, terms.out);
  const bar = terms.progress(files.length);
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
  const { functions, now, replace } = terms;
  const { bytes, changes, formulas, remarks } = await recalculated(readWhole(file), basename(file), functions, { now });
  writeWhole(target, bytes, { inputs, replace });
  const ours = `${formulas} ${formulas === 1 ? 'formula' : 'formulas'} of ours`;
  const changed =
    changes.length === 0 ? 'nothing changed' : `${changes.length} ${changes.length === 1 ? 'cell' : 'cells'} changed`;
  const head = `${printable(file)} -> ${printable(target)}: ${ours}, ${changed}`;
  return [head, ...changes.map(changeLine), ...remarks.map((remark) => `  ${printable(remark)}`)].join('\n');
}

function changeLine({ sheet, row, column, was, is, formula, reason }: CellChange): string {
  const from = formula === '' ? '' : `  ${printable(formula)}`;
  const why = reason === undefined || reason === '' ? '' : `  (${printable(reason)})`;
  return `  ${printable(sheet)}!${addressOf(row, column)}: ${value(was)} -> ${value(is)}${why}${from}`;
}

function value(cell: CellChange['is']): string {
  const text = typeof cell === 'string' ? `"${cellText(cell, false)}"` : cellText(cell, false);
  return cell === null ? 'empty' : text;
}

/** One file goes to the file named; several, or a folder that is there, to files of the same names in a folder. */
function targetsOf(files: readonly string[], out: string): string[] {
  const there = fileAt(out);
  const isFolder = there?.isDirectory() === true;
  if (files.length === 1 && !isFolder) return [out];
  if (there !== undefined && !isFolder)
    throw new FileProblem(`${out} is a file; for ${files.length} files give a folder`);
  mkdirSync(out, { recursive: true });
  const targets = files.map((file) => join(out, basename(file)));
  const twice = targets.find((target, i) => targets.indexOf(target) !== i);
  if (twice !== undefined) throw new FileProblem(`two files are named ${basename(twice)}; run them apart`);
  return targets;
}
