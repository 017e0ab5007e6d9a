import { mkdirSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileAt } from './files/fileAt.js';
import { systemReason } from './files/systemReason.js';
import { FileProblem } from '../../sheet/index.js';

/** Names that say what is in a file. */
const ending = /\.(?:xlsx|xlsm|xls|ods|csv|tsv)$/i;

interface RecalcAsked {
  /** As named on the command line, files and folders. */
  readonly paths: readonly string[];
  readonly out: string;
}

/**
 * Where each copy goes: one file to the file named; several, what a folder holds, or one where a folder is named, to files of
 * the same names in a folder.
 */
export function recalcTargets(files: readonly string[], { paths, out }: RecalcAsked): string[] {
  if (out.trim() === '') throw new FileProblem('--out is empty; give the name of the copy');
  const there = fileAt(out);
  const isFolder = there?.isDirectory() === true || /[/\\]$/.test(out);
  const namesFile = !isFolder && (there !== undefined || ending.test(out));
  const [first = ''] = files;
  if (files.length === 1 && !isFolder && (namesFile || !paths.some(isFolderAt))) return [sameKind(out, first)];
  if (namesFile) throw new FileProblem(`${out} is a file; for ${files.length} files give a folder`);
  refuseSameNames(files);
  makeFolder(out);
  return files.map((file) => join(out, basename(file)));
}

function isFolderAt(path: string): boolean {
  return fileAt(path)?.isDirectory() === true;
}

/** A copy is what its original is: under the name of another kind no program would open it. */
function sameKind(out: string, file: string): string {
  const [is, asked] = [file, out].map((name) => ending.exec(name)?.[0].toLowerCase());
  if (is === undefined || asked === undefined || is === asked) return out;
  throw new FileProblem(`${out}: the copy is of the same kind as ${file}; give it a name that ends in ${is}`);
}

function refuseSameNames(files: readonly string[]): void {
  const seen = new Map<string, string>();
  for (const file of files) {
    const name = basename(file).toLowerCase();
    const other = seen.get(name);
    if (other !== undefined) throw new FileProblem(`${other} and ${file} have the same name; run them apart`);
    seen.set(name, file);
  }
}

function makeFolder(path: string): void {
  try {
    mkdirSync(path, { recursive: true });
  } catch (fault) {
    throw new FileProblem(`the folder ${path} cannot be made: ${systemReason(fault)}`);
  }
}
