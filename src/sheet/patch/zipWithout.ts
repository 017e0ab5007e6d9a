import { centralDirectory } from '../zip/centralDirectory.js';
import { movedRecord } from '../zip/movedRecord.js';
import { zipEntries } from '../zip/zipEntries.js';

/** The same archive without the named parts; all others stay the packed bytes they are. */
export function zipWithout(bytes: Uint8Array, names: ReadonlySet<string>): Uint8Array {
  const entries = zipEntries(bytes);
  const directory = centralDirectory(bytes);
  const inPlace = [...entries].sort((one, other) => one.headerStart - other.headerStart);
  const pieces = [bytes.subarray(0, inPlace[0]?.headerStart ?? directory.start)];
  const starts = new Map<string, number>();
  let length = pieces[0]?.length ?? 0;
  inPlace.forEach(({ name, headerStart }, index) => {
    if (names.has(name)) return;
    const piece = bytes.subarray(headerStart, inPlace[index + 1]?.headerStart ?? directory.start);
    starts.set(name, length);
    pieces.push(piece);
    length += piece.length;
  });
  const records = entries.flatMap(({ name, recordStart, recordLength }) => {
    const start = starts.get(name);
    return start === undefined ? [] : [movedRecord(bytes.subarray(recordStart, recordStart + recordLength), start)];
  });
  const end = bytes.slice(directory.endRecord);
  const view = new DataView(end.buffer);
  view.setUint16(8, records.length, true);
  view.setUint16(10, records.length, true);
  view.setUint32(12, total(records), true);
  view.setUint32(16, length, true);
  return joined([...pieces, ...records, end]);
}

function total(pieces: readonly Uint8Array[]): number {
  return pieces.reduce((sum, piece) => sum + piece.length, 0);
}

function joined(pieces: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(total(pieces));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}
