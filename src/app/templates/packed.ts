import { zipSync, type Zippable } from 'fflate';
import { partOf, zipEntries } from '../../sheet/index.js';

const firstPart = '[Content_Types].xml';

/**
 * The same parts packed anew in a fixed order, all of one moment: the same workbook is the same file, and says nothing of
 * the clock of the machine that it was made on.
 * @param made such as `2026-03-01T08:00:00Z`
 */
export function packed(bytes: Uint8Array, made: string): Uint8Array {
  const names = zipEntries(bytes)
    .map((entry) => [entry.name, partOf(bytes, entry)] as const)
    .sort(([a], [b]) => (a === firstPart ? -1 : b === firstPart ? 1 : a < b ? -1 : 1));
  // The packer takes the wall clock of this machine; the fields of the moment are given to it as they stand.
  const [date = '', time = ''] = made.replace('Z', '').split('T');
  const mtime = new Date(`${date}T${time}`);
  const parts: Zippable = Object.fromEntries(names.map(([name, part]) => [name, [part, { mtime, level: 6 }]]));
  return zipSync(parts);
}
