import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { FileProblem } from '../zip/fileProblem.js';
import { fileAt } from './fileAt.js';
import { systemReason } from './systemReason.js';

/** What a folder is searched for. */
const workbook = /\.(?:xlsx|xlsm|ods|csv|tsv)$/i;
/** Hidden files, and the locks that programs leave beside an open workbook. */
const passedOver = /^(?:\.|~\$)/;

/**
 * Files in the order named; a folder stands for the workbooks in it and below, by name. A file that is named itself is taken
 * whatever its ending. Each once.
 */
export function inputFiles(paths: readonly string[]): string[] {
  return [...new Set(paths.flatMap((path) => (isFolder(path) ? workbooksIn(path) : [path])))];
}

function isFolder(path: string): boolean {
  const there = fileAt(path);
  if (there === undefined) throw new FileProblem(`${path}: there is no such file or folder`);
  return there.isDirectory();
}

function workbooksIn(folder: string): string[] {
  const found = filesBelow(folder).filter((path) => workbook.test(path));
  if (found.length === 0) throw new FileProblem(`${folder} holds no .xlsx, .xlsm, .ods, .csv or .tsv file`);
  return found;
}

/** Links to folders are not followed: they may lead round. */
function filesBelow(folder: string): string[] {
  try {
    return readdirSync(folder, { withFileTypes: true })
      .filter(({ name }) => !passedOver.test(name))
      .sort((one, other) => (one.name < other.name ? -1 : 1))
      .flatMap((entry) => {
        const path = join(folder, entry.name);
        return entry.isDirectory() ? filesBelow(path) : [path];
      });
  } catch (fault) {
    if (fault instanceof FileProblem) throw fault;
    throw new FileProblem(`${folder} cannot be read: ${systemReason(fault)}`);
  }
}
