import { centralDirectory } from './centralDirectory.js';
import { type CentralRecord, centralRecord } from './centralRecord.js';
import { checkName } from './checkName.js';
import { dataStart } from './dataStart.js';
import { FileProblem } from './fileProblem.js';
import type { ZipEntry } from './zipEntry.js';
import { zipLimits } from './zipLimits.js';

export type { ZipEntry } from './zipEntry.js';

const encrypted = 0x2041;

/** The parts of a zip archive in the order of its central directory, checked before anything is inflated. */
export function zipEntries(bytes: Uint8Array): ZipEntry[] {
  const directory = centralDirectory(bytes);
  if (directory.entries > zipLimits.entries) throw tooMany();
  const entries: ZipEntry[] = [];
  const names = new Set<string>();
  let total = 0;
  for (let at = directory.start; at < directory.end;) {
    const record = centralRecord(bytes, at, directory.end);
    at += record.recordLength;
    if (entries.length === zipLimits.entries) throw tooMany();
    checkRecord(record, names);
    total += record.size;
    const method = record.method === 0 ? 0 : 8;
    entries.push({ ...placeOf(record), method, dataStart: dataStart(bytes, record, directory.start) });
  }
  if (entries.length !== directory.entries) {
    throw new FileProblem(
      'The file is damaged: its archive holds another number of parts than it says; get a fresh copy of it.',
    );
  }
  checkSum(total, bytes.length);
  checkOverlaps(entries);
  return entries;
}

function placeOf(record: CentralRecord): Omit<ZipEntry, 'method' | 'dataStart'> {
  const { name, crc, compressedSize, size, headerStart, recordStart, recordLength } = record;
  return { name, crc, compressedSize, size, headerStart, recordStart, recordLength };
}

function checkRecord(record: CentralRecord, names: Set<string>): void {
  checkName(record.name);
  const folded = record.name.toLowerCase();
  if (names.has(folded)) {
    throw new FileProblem(
      `The file was tampered with: its archive holds the part ${JSON.stringify(record.name)} twice.`,
    );
  }
  names.add(folded);
  if ((record.flags & encrypted) !== 0) {
    throw new FileProblem('The file is protected by a password; save a copy without one.');
  }
  if (record.method !== 0 && record.method !== 8) {
    throw new FileProblem(
      'The file is packed in a way no spreadsheet program uses; open it there and save it again as .xlsx.',
    );
  }
  const dense = record.size > zipLimits.smallPart && record.size > record.compressedSize * zipLimits.ratio;
  if (dense || (record.method === 0 && record.size !== record.compressedSize)) throw bomb(record.size);
}

function checkSum(total: number, length: number): void {
  const dense = total > 4 * zipLimits.smallPart && total > length * zipLimits.ratio;
  if (dense || total > zipLimits.totalSize) throw bomb(total);
}

/** Parts that share their bytes make a small file unfold without end. */
function checkOverlaps(entries: readonly ZipEntry[]): void {
  const inPlace = [...entries].sort((one, other) => one.headerStart - other.headerStart);
  let end = 0;
  for (const entry of inPlace) {
    if (entry.headerStart < end) {
      throw new FileProblem('The file was tampered with: parts of its archive lie on top of each other.');
    }
    end = entry.dataStart + entry.compressedSize;
  }
}

function bomb(size: number): FileProblem {
  const megabytes = Math.round(size / 1024 / 1024);
  return new FileProblem(
    `The file claims to unfold to ${megabytes} MB, which no log does (at most ${zipLimits.totalSize / 1024 / 1024} MB, and ${zipLimits.ratio} times its size); it is not opened.`,
  );
}

function tooMany(): FileProblem {
  return new FileProblem(
    `The archive in the file has more than ${zipLimits.entries.toLocaleString('en-GB')} parts, which no workbook has; it is not opened.`,
  );
}
