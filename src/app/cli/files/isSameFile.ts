import { resolve } from 'node:path';
import { fileAt } from './fileAt.js';

/** Whether two paths name one file, also by links of either kind or another spelling. */
export function isSameFile(first: string, second: string): boolean {
  if (resolve(first) === resolve(second)) return true;
  const [one, other] = [fileAt(first), fileAt(second)];
  return one !== undefined && other !== undefined && one.ino === other.ino && one.dev === other.dev;
}
