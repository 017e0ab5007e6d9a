import type { FreshName } from './freshEntry.js';
import type { ZipEntry } from './zipEntry.js';

const utf8Name = 0x0800;
const zip64 = 1;

/** What a replaced part keeps of its old record: date, attributes, comment, extra fields but the sizes of zip64. */
export function keptOf(bytes: Uint8Array, entry: ZipEntry): FreshName {
  const record = bytes.subarray(entry.recordStart, entry.recordStart + entry.recordLength);
  const view = new DataView(record.buffer, record.byteOffset, record.byteLength);
  const nameEnd = 46 + view.getUint16(28, true);
  const extraEnd = nameEnd + view.getUint16(30, true);
  return {
    name: record.subarray(46, nameEnd),
    kept: {
      flags: view.getUint16(8, true) & utf8Name,
      time: view.getUint16(12, true),
      date: view.getUint16(14, true),
      madeBy: view.getUint16(4, true),
      internal: view.getUint16(36, true),
      external: view.getUint32(38, true),
      extra: withoutZip64(record.subarray(nameEnd, extraEnd)),
      comment: record.subarray(extraEnd),
    },
  };
}

function withoutZip64(extra: Uint8Array): Uint8Array {
  const view = new DataView(extra.buffer, extra.byteOffset, extra.byteLength);
  const kept: number[] = [];
  for (let at = 0, end; at + 4 <= extra.length; at = end) {
    end = Math.min(extra.length, at + 4 + view.getUint16(at + 2, true));
    if (view.getUint16(at, true) !== zip64) kept.push(...extra.subarray(at, end));
  }
  return Uint8Array.from(kept);
}
