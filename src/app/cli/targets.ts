import { mkdirSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileAt } from './files/fileAt.js';
import { systemReason } from './files/systemReason.js';
import { FileProblem } from '../../sheet/index.js';
import type { AuditedFile } from './auditedFile.js';

/** Not in a file's name on one system or another. */
// eslint-disable-next-line no-control-regex -- these too
const notInNames = /[\u0000-\u001f<>:"/\\|?*]+/g;

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
  const toFolder = namesFolder(out);
  const namesFile = !toFolder && (fileAt(out) !== undefined || ending.test(out));
  const [first = ''] = files;
  if (files.length === 1 && !toFolder && (namesFile || !paths.some(isFolder))) return [sameKind(out, first)];
  if (namesFile) throw new FileProblem(`${out} is a file; give a folder for ${files.length} files`);
  refuseSameNames(files);
  makeFolder(out);
  return files.map((file) => join(out, basename(file)));
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
    if (other !== undefined) throw new FileProblem(`${other} and ${file} have the same name; run them separately`);
    seen.set(name, file);
  }
}

/**
 * Where each report goes: one to the file named; several, or one where a folder is named, each to a file of its own in the
 * folder, named after workbook, sheet and system.
 */
export function reportTargets(audits: readonly AuditedFile[], out: string): string[] {
  const toFolder = namesFolder(out);
  if (audits.length === 1 && !toFolder) return [out];
  if (!toFolder && /\.html?$/i.test(out)) {
    throw new FileProblem(
      `${audits.length} treatments were audited; give a folder for their reports, or choose one with --system or --sheet`,
    );
  }
  makeFolder(out);
  const taken = new Set<string>();
  return audits.map((each) => {
    const name = nameOf(each);
    let free = name;
    for (let n = 2; taken.has(free.toLowerCase()); n++) free = `${name} ${n}`;
    taken.add(free.toLowerCase());
    return join(out, `${free}.html`);
  });
}

function nameOf({ file, audited: { log, system } }: AuditedFile): string {
  const workbook = basename(file).replace(/\.[^.]+$/, '');
  return [workbook, log.sheet, system ?? '']
    .map((part) => part.replace(notInNames, '-').trim())
    .filter((part, i, parts) => part !== '' && parts.indexOf(part) === i)
    .join(' ')
    .slice(0, 150);
}

function namesFolder(path: string): boolean {
  return isFolder(path) || /[/\\]$/.test(path);
}

function isFolder(path: string): boolean {
  return fileAt(path)?.isDirectory() === true;
}

function makeFolder(path: string): void {
  try {
    mkdirSync(path, { recursive: true });
  } catch (fault) {
    throw new FileProblem(`the folder ${path} cannot be created: ${systemReason(fault)}`);
  }
}
