import { deflateSync } from 'fflate';
import { crc32 } from './crc32.js';

/** A part as it goes into an archive anew: header with name, packed bytes, and its record for the directory. */
interface FreshEntry {
  readonly local: readonly Uint8Array[];
  /** Its place is filled in by whoever knows it. */
  readonly record: Uint8Array;
}

/** What a part that replaces another keeps of it. */
export interface Kept {
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

/** Under which name, and with what of an older part. */
export interface FreshName {
  readonly name: Uint8Array;
  readonly kept: Kept;
}

const version = 20;

/** The first part of an .ods file stands unpacked, so that a look at its first bytes tells what it is. */
export function freshEntry(part: Uint8Array, at: FreshName, stored: boolean): FreshEntry {
  const { name, kept } = at;
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
  return { local: [local, name, packed], record: recordOf(common, name, kept) };
}

/** Extra fields of the directory are not those of the header: they stay in the record alone. */
function recordOf(common: DataView, name: Uint8Array, kept: Kept): Uint8Array {
  const record = new Uint8Array(46 + name.length + kept.extra.length + kept.comment.length);
  const view = new DataView(record.buffer);
  view.setUint32(0, 0x02014b50, true);
  view.setUint16(4, kept.madeBy, true);
  record.set(new Uint8Array(common.buffer), 6);
  view.setUint16(32, kept.comment.length, true);
  view.setUint16(36, kept.internal, true);
  view.setUint32(38, kept.external, true);
  record.set(name, 46);
  record.set(kept.extra, 46 + name.length);
  record.set(kept.comment, 46 + name.length + kept.extra.length);
  return record;
}
