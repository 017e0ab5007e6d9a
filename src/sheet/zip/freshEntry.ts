import { deflateSync } from 'fflate';
import { extraFields, recordPlaces } from './centralRecord.js';
import { crc32 } from './crc32.js';
import type { ZipEntry } from './zipEntries.js';

/** A part that goes into an archive: its header with its name, its packed bytes, and its record for the directory. */
interface FreshEntry {
  readonly local: readonly Uint8Array[];
  /** Its place in the archive is filled in later. */
  readonly record: Uint8Array;
}

/** What a part that replaces another keeps of the old record: all but its sizes. */
interface Kept {
  readonly name: Uint8Array;
  /** Bit 11 says that the name is in UTF-8. */
  readonly flags: number;
  readonly time: number;
  readonly date: number;
  readonly madeBy: number;
  readonly internal: number;
  readonly external: number;
  readonly extra: Uint8Array;
  readonly comment: Uint8Array;
}

const version = 20;
const utf8Name = 0x0800;

/**
 * A part with its header and record; what is kept of an older part, such as its name, is used again. The first part of
 * an .ods file is not compressed, so that the first bytes of the file show what it is.
 */
export function freshEntry(part: Uint8Array, kept: Kept, stored: boolean): FreshEntry {
  const { name } = kept;
  const packed = stored ? part : deflateSync(part);
  const common = new DataView(new ArrayBuffer(26));
  [version, kept.flags, stored ? 0 : 8, kept.time, kept.date].forEach((value, index) => {
    common.setUint16(index * 2, value, true);
  });
  [crc32(part), packed.length, part.length].forEach((value, index) => {
    common.setUint32(10 + index * 4, value, true);
  });
  common.setUint16(22, name.length, true);
  common.setUint16(24, kept.extra.length, true);
  const header = new DataView(new ArrayBuffer(30));
  header.setUint32(0, 0x04034b50, true);
  const local = new Uint8Array(header.buffer);
  local.set(new Uint8Array(common.buffer), 4);
  local.fill(0, 28, 30);
  return { local: [local, name, packed], record: recordOf(common, kept) };
}

/** Extra fields of the directory differ from those of the header, so they go into the record only. */
function recordOf(common: DataView, kept: Kept): Uint8Array {
  const { name, extra, comment } = kept;
  const record = new Uint8Array(46 + name.length + extra.length + comment.length);
  const view = new DataView(record.buffer);
  view.setUint32(0, 0x02014b50, true);
  view.setUint16(4, kept.madeBy, true);
  record.set(new Uint8Array(common.buffer), 6);
  view.setUint16(32, comment.length, true);
  view.setUint16(36, kept.internal, true);
  view.setUint32(38, kept.external, true);
  record.set(name, 46);
  record.set(extra, 46 + name.length);
  record.set(comment, 46 + name.length + extra.length);
  return record;
}

/** Date, attributes, comment and extra fields of a part, but for the sizes of zip64. */
export function keptOf(bytes: Uint8Array, entry: ZipEntry): Kept {
  const record = bytes.subarray(entry.recordStart, entry.recordStart + entry.recordLength);
  const view = new DataView(record.buffer, record.byteOffset, record.byteLength);
  const { nameStart, extraStart, commentStart } = recordPlaces(view, 0);
  const fields = extraFields(view, { from: extraStart, to: commentStart }).filter(({ isZip64 }) => !isZip64);
  return {
    name: record.subarray(nameStart, extraStart),
    flags: view.getUint16(8, true) & utf8Name,
    time: view.getUint16(12, true),
    date: view.getUint16(14, true),
    madeBy: view.getUint16(4, true),
    internal: view.getUint16(36, true),
    external: view.getUint32(38, true),
    extra: Uint8Array.from(fields.flatMap(({ from, to }) => [...record.subarray(from, to)])),
    comment: record.subarray(commentStart),
  };
}

/** For a part that is new: its date is the first that the format knows, so that the same edit always gives the same file. */
export function keptOfNone(name: string): Kept {
  const none = new Uint8Array(0);
  const attributes = { flags: utf8Name, time: 0, date: 0x21, madeBy: version, internal: 0, external: 0 };
  return { ...attributes, name: new TextEncoder().encode(name), extra: none, comment: none };
}
