import { centralDirectory } from './centralDirectory.js';
import { movedRecord } from './centralRecord.js';
import { freshEntry, keptOf, keptOfNone } from './freshEntry.js';
import { zipEntries, type ZipEntry } from './zipEntries.js';

/**
 * The same archive with the named parts replaced, or added at its end; those given as null are taken out. All others are
 * copied as the packed bytes they are, with their headers, dates, extra fields and order; the archive's comment stays.
 */
export function zipWith(bytes: Uint8Array, parts: ReadonlyMap<string, Uint8Array | null>): Uint8Array {
  const entries = zipEntries(bytes);
  const directory = centralDirectory(bytes);
  const written = new Pieces();
  const records = new Map<string, Uint8Array>();
  const put = (name: string, part: Uint8Array, entry?: ZipEntry): void => {
    const kept = entry === undefined ? keptOfNone(name) : keptOf(bytes, entry);
    const fresh = freshEntry(part, kept, name === 'mimetype');
    records.set(name, movedRecord(fresh.record, written.length));
    fresh.local.forEach((piece) => written.add(piece));
  };

  const inPlace = [...entries].sort((one, other) => one.headerStart - other.headerStart);
  // Bytes in front of the first part stay.
  written.add(bytes.subarray(0, inPlace[0]?.headerStart ?? directory.start));
  inPlace.forEach((entry, index) => {
    const part = parts.get(entry.name);
    if (part === null) return;
    if (part !== undefined) return put(entry.name, part, entry);
    records.set(entry.name, movedRecord(recordOf(bytes, entry), written.length));
    // A part reaches to the next one, so that sizes written after its data go with it.
    written.add(bytes.subarray(entry.headerStart, inPlace[index + 1]?.headerStart ?? directory.start));
  });
  const known = new Set(entries.map(({ name }) => name));
  for (const [name, part] of parts) if (part !== null && !known.has(name)) put(name, part);
  const start = written.length;
  const listed = [...known, ...records.keys()];
  const ordered = [...new Set(listed)].flatMap((name) => records.get(name) ?? []);
  for (const record of ordered) written.add(record);
  const place = { entries: ordered.length, start, length: written.length - start };
  written.add(endRecord(bytes.subarray(directory.endRecord), place));
  return written.whole();
}

function recordOf(bytes: Uint8Array, entry: ZipEntry): Uint8Array {
  return bytes.subarray(entry.recordStart, entry.recordStart + entry.recordLength);
}

/** The old end record with its comment; archives within our limits never need the wide one of zip64. */
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

class Pieces {
  length = 0;
  readonly #pieces: Uint8Array[] = [];

  add(piece: Uint8Array): void {
    this.#pieces.push(piece);
    this.length += piece.length;
  }

  whole(): Uint8Array {
    const whole = new Uint8Array(this.length);
    let at = 0;
    for (const piece of this.#pieces) {
      whole.set(piece, at);
      at += piece.length;
    }
    return whole;
  }
}
