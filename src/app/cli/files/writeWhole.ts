import { closeSync, fsyncSync, openSync, renameSync, rmSync, writeSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { FileProblem } from '../../../sheet/index.js';
import { fileAt } from './fileAt.js';
import { systemReason } from './systemReason.js';

interface WriteTerms {
  /** Files that were read: none of them is ever written to. */
  readonly inputs: readonly string[];
  /** A file that stands at the target may be replaced. */
  readonly replace: boolean;
}

/**
 * Writes a file whole or not at all: into a temporary file beside the target, which is then renamed. Whatever goes wrong,
 * what stood at the target before still stands there.
 */
export function writeWhole(target: string, content: Uint8Array | string, { inputs, replace }: WriteTerms): void {
  refuseTarget(target, inputs, replace);
  const beside = join(dirname(target), `.${basename(target)}.${process.pid}.part`);
  const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
  let isOurs = false;
  try {
    // 'wx': a file of this name is somebody else's.
    const handle = openSync(beside, 'wx');
    isOurs = true;
    writeThrough(handle, bytes);
    renameSync(beside, target);
  } catch (fault) {
    if (isOurs) rmSync(beside, { force: true });
    throw new FileProblem(`${target} cannot be written: ${systemReason(fault)}; nothing was changed`);
  }
}

function refuseTarget(target: string, inputs: readonly string[], replace: boolean): void {
  const input = inputs.find((one) => isSameFile(one, target));
  if (input !== undefined) {
    throw new FileProblem(`${target} is an input file, which is never overwritten; give another name`);
  }
  const there = fileAt(target);
  if (there === undefined) return;
  if (there.isDirectory()) throw new FileProblem(`${target} is a folder; give the name of a file`);
  if (!there.isFile()) throw new FileProblem(`${target} is not an ordinary file; give another name`);
  // A read-only file was protected on purpose, although its folder would allow the rename.
  if ((there.mode & 0o222n) === 0n) throw new FileProblem(`${target} is read-only; give another name`);
  if (there.size > 0 && !replace) {
    throw new FileProblem(`${target} already exists; give another name, or --replace to overwrite it`);
  }
}

/** Whether two paths name one file, also by links of either kind or another spelling. */
function isSameFile(first: string, second: string): boolean {
  if (resolve(first) === resolve(second)) return true;
  const [one, other] = [fileAt(first), fileAt(second)];
  return one !== undefined && other !== undefined && one.ino === other.ino && one.dev === other.dev;
}

/** Bytes on the disk, not in a cache, before anything takes the name of the target. */
function writeThrough(handle: number, bytes: Uint8Array): void {
  try {
    for (let done = 0; done < bytes.length;) done += writeSync(handle, bytes, done);
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}
