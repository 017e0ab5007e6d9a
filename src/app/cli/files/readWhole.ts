import { readFileSync, statSync } from 'node:fs';
import { FileProblem } from '../../../sheet/index.js';
import { systemReason } from './systemReason.js';

/** Larger than any log, smaller than what would exhaust a machine. [bytes] */
const largest = 200_000_000;

/** The bytes of a file, if it is an ordinary file of a size that a workbook can have. */
export function readWhole(path: string): Uint8Array {
  try {
    // Checked before it is opened: opening a pipe that nobody writes to would wait forever.
    const there = statSync(path);
    if (!there.isFile()) throw new FileProblem(`${path} is not a file; give a workbook or a folder of workbooks`);
    if (there.size > largest) {
      throw new FileProblem(`${path} has ${there.size} bytes; at most ${largest} are read, so split it`);
    }
    return new Uint8Array(readFileSync(path));
  } catch (fault) {
    if (fault instanceof FileProblem) throw fault;
    throw new FileProblem(`${path} cannot be read: ${systemReason(fault)}`);
  }
}
