import { centralDirectory } from './centralDirectory.js';
import { type CentralRecord, centralRecord } from './centralRecord.js';
import { dataStart } from './dataStart.js';
import { FileProblem } from './fileProblem.js';

/** One part of a zip archive, as its central directory lists it and its local header confirms it. */
export interface ZipEntry extends CentralRecord {
  /** Where its compressed bytes begin. */
  readonly dataStart: number;
}

/** What an archive may claim before anything in it is inflated. Far more than any workbook needs, and far less than would do harm. */
const most = {
  entries: 10_000,
  /** Bytes of all parts together, inflated. */
  totalSize: 512 * 1024 * 1024,
  /** Rows of numbers compress twenty to a hundred times. */
  ratio: 250,
  /** Below this many bytes a part may be packed as tightly as it likes, as a blank picture is. */
  smallPart: 8 * 1024 * 1024,
} as const;
const encrypted = 0x2041;

/** The parts of a zip archive in the order of its central directory, checked before anything is inflated. */
export function zipEntries(bytes: Uint8Array): ZipEntry[] {
  const directory = centralDirectory(bytes);
  if (directory.entries > most.entries) throw tooMany();
  const entries: ZipEntry[] = [];
  const names = new Set<string>();
  let total = 0;
  for (let at = directory.start; at < directory.end;) {
    const record = centralRecord(bytes, at, directory.end);
    at += record.recordLength;
    if (entries.length === most.entries) throw tooMany();
    checkRecord(record, names);
    total += record.size;
    entries.push({ ...record, dataStart: dataStart(bytes, record, directory.start) });
  }
  if (entries.length !== directory.entries) {
    throw new FileProblem(
      'The file is damaged: its archive does not hold as many parts as it says; get a fresh copy of it.',
    );
  }
  checkSum(total, bytes.length);
  checkOverlaps(entries);
  return entries;
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
      'The file is packed in a way that no spreadsheet program uses; open it there and save it again as .xlsx.',
    );
  }
  const dense = record.size > most.smallPart && record.size > record.compressedSize * most.ratio;
  if (dense || (record.method === 0 && record.size !== record.compressedSize)) throw bomb(record.size);
}

/** Refuses a name that could lead out of the archive or be read in two ways. */
function checkName(name: string): void {
  const isControl = [...name].some((letter) => letter.charCodeAt(0) < 32);
  const leadsOut = /^(?:\/|[A-Za-z]:)/.test(name) || name.split('/').some((step) => step === '..' || step === '.');
  if (name === '' || isControl || name.includes('\\') || leadsOut) {
    throw new FileProblem(
      `The file was tampered with: its archive has a part named ${JSON.stringify(name.slice(0, 60))}, and no workbook has one like it.`,
    );
  }
}

function checkSum(total: number, length: number): void {
  const dense = total > 4 * most.smallPart && total > length * most.ratio;
  if (dense || total > most.totalSize) throw bomb(total);
}

/** Parts that share their bytes would let a small file unpack without end. */
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
    `The file says that it unpacks to ${megabytes} MB; it is not opened, for at most ${most.totalSize / 1024 / 1024} MB, and at most ${most.ratio} times its size, are accepted.`,
  );
}

function tooMany(): FileProblem {
  return new FileProblem(
    `The archive in the file has more than ${most.entries.toLocaleString('en-GB')} parts, which no workbook has; it is not opened.`,
  );
}
