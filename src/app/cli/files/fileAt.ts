import { statSync, type BigIntStats } from 'node:fs';
import { FileProblem } from '../../../sheet/index.js';
import { systemReason } from './systemReason.js';

const nothingThere = new Set(['ENOENT', 'ENOTDIR', 'ENAMETOOLONG']);

/** The file or folder at a path, links followed; undefined if there is none. */
export function fileAt(path: string): BigIntStats | undefined {
  try {
    return statSync(path, { bigint: true });
  } catch (fault) {
    if (nothingThere.has((fault as NodeJS.ErrnoException).code ?? '')) return undefined;
    throw new FileProblem(`${path} cannot be examined: ${systemReason(fault)}`);
  }
}
