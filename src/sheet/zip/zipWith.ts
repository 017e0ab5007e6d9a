import { centralDirectory } from './centralDirectory.js';
import { freshEntry, type FreshName, type Kept } from './freshEntry.js';
import { keptOf } from './keptOf.js';
import { movedRecord } from './movedRecord.js';
import { zipEntries, type ZipEntry } from './zipEntries.js';

const none = new Uint8Array(0);
/** A part that was not there before carries the first date the format knows, so that the same work gives the same file. */
const added: Kept = {
  flags: 0x0800,
  time: 0,
  date: 0x21,
  madeBy: 20,
  internal: 0,
  external: 0,
  extra: none,
  comment: none,
};

/**
 * The same archive with the named parts replaced, or added at its end. All others are copied as the packed bytes they
 * are, with their headers, dates, extra fields and order; the comment of the archive stays.
 */
export function zipWith(bytes: Uint8Array, parts: ReadonlyMap<string, Uint8Array>): Uint8Array {
  const entries = zipEntries(bytes);
  const directory = centralDirectory(bytes);
  const written: Uint8Array[] = [];
  const records = new Map<string, Uint8Array>();
  let length = 0;
  const write = (piece: Uint8Array): void => {
    written.push(piece);
    length += piece.length;
  };
  const put = (name: string, at: FreshName, part: Uint8Array): void => {
    const entry = freshEntry(part, at, name === 'mimetype');
    records.set(name, movedRecord(entry.record, length));
    entry.local.forEach(write);
  };

  for (const { entry, start, end } of slots(entries, directory.start)) {
    const part = entry === undefined ? undefined : parts.get(entry.name);
    if (entry !== undefined && part !== undefined) {
      put(entry.name, keptOf(bytes, entry), part);
      continue;
    }
    if (entry !== undefined) records.set(entry.name, movedRecord(recordOf(bytes, entry), length));
    write(bytes.subarray(start, end));
  }
  for (const [name, part] of parts) {
    if (!records.has(name)) put(name, { name: new TextEncoder().encode(name), kept: added }, part);
  }
  const start = length;
  const names = [...new Set([...entries.map((entry) => entry.name), ...records.keys()])];
  for (const name of names) write(records.get(name) ?? none);
  write(endRecord(bytes.subarray(directory.endRecord), { entries: names.length, start, length: length - start }));
  return joined(written, length);
}

interface Slot {
  /** Undefined for bytes in front of the first part. */
  readonly entry: ZipEntry | undefined;
  readonly start: number;
  readonly end: number;
}

/** A part reaches to the next one, so that sizes written after its data go with it. */
function slots(entries: readonly ZipEntry[], end: number): Slot[] {
  const inPlace = [...entries].sort((one, other) => one.headerStart - other.headerStart);
  const first = { entry: undefined, start: 0, end: inPlace[0]?.headerStart ?? end };
  const parts = inPlace.map((entry, index) => ({
    entry,
    start: entry.headerStart,
    end: inPlace[index + 1]?.headerStart ?? end,
  }));
  return [first, ...parts];
}

function recordOf(bytes: Uint8Array, entry: ZipEntry): Uint8Array {
  return bytes.subarray(entry.recordStart, entry.recordStart + entry.recordLength);
}

/** The old end record with its comment; the limits of an archive leave no need for the wide one of zip64. */
function endRecord(old: Uint8Array, place: { entries: number; start: number; length: number }): Uint8Array {
  const record = new Uint8Array(old);
  const view = new DataView(record.buffer);
  view.setUint32(4, 0, true);
  view.setUint16(8, place.entries, true);
  view.setUint16(10, place.entries, true);
  view.setUint32(12, place.length, true);
  view.setUint32(16, place.start, true);
  return record;
}

function joined(pieces: readonly Uint8Array[], length: number): Uint8Array {
  const whole = new Uint8Array(length);
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}
