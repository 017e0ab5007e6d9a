import { readdirSync, type Dirent } from 'node:fs';
import { join } from 'node:path';
import { FileProblem } from '../../../sheet/index.js';
import { fileAt } from './fileAt.js';
import { systemReason } from './systemReason.js';

/** What a folder is searched for. */
const workbook = /\.(?:xlsx|xlsm|ods|csv|tsv)$/i;
/** Hidden files, and the locks that programs leave beside an open workbook. */
const passedOver = /^(?:\.|~\$)/;

/**
 * Files in the order named; a folder stands for the workbooks in it and below, by name. A file that is named itself is taken
 * whatever its ending. Each once. What is missing or unreadable is refused; with `passOver` it is reported instead, and the
 * rest is taken.
 */
export function inputFiles(paths: readonly string[], passOver?: PassOver): string[] {
  const found = paths.flatMap((path) =>
    orPassedOver(path, passOver, () => (isFolder(path) ? workbooksIn(path, passOver) : [path])),
  );
  return [...new Set(found)];
}

/** Hears of a path that is left out, and why. */
type PassOver = (path: string, problem: FileProblem) => void;

function orPassedOver(path: string, passOver: PassOver | undefined, files: () => string[]): string[] {
  try {
    return files();
  } catch (fault) {
    if (!(fault instanceof FileProblem) || passOver === undefined) throw fault;
    passOver(path, fault);
    return [];
  }
}

function isFolder(path: string): boolean {
  const there = fileAt(path);
  if (there === undefined) throw new FileProblem(`${path}: there is no such file or folder`);
  return there.isDirectory();
}

function workbooksIn(folder: string, passOver: PassOver | undefined): string[] {
  let isWhole = true;
  const told: PassOver | undefined =
    passOver &&
    ((path, problem) => {
      isWhole = false;
      passOver(path, problem);
    });
  const found = filesBelow(folder, told).filter((path) => workbook.test(path));
  if (found.length === 0 && isWhole)
    throw new FileProblem(`${folder} contains no .xlsx, .xlsm, .ods, .csv or .tsv file`);
  return found;
}

/** Links to folders are not followed: they may lead in a circle. */
function filesBelow(folder: string, passOver: PassOver | undefined): string[] {
  return orPassedOver(folder, passOver, () =>
    entriesOf(folder).flatMap((entry) => {
      const path = join(folder, entry.name);
      return entry.isDirectory() ? filesBelow(path, passOver) : [path];
    }),
  );
}

function entriesOf(folder: string): Dirent[] {
  try {
    return readdirSync(folder, { withFileTypes: true })
      .filter(({ name }) => !passedOver.test(name))
      .sort((one, other) => (one.name < other.name ? -1 : 1));
  } catch (fault) {
    throw new FileProblem(`${folder} cannot be read: ${systemReason(fault)}`);
  }
}
