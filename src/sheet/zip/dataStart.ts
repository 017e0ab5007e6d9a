import type { CentralRecord } from './centralRecord.js';
import { FileProblem } from './fileProblem.js';

const signature = 0x04034b50;
const fixedLength = 30;
const sizesFollow = 8;
const encrypted = 1;
const elsewhere = 0xffffffff;

/**
 * Where the compressed bytes of a part begin, after its local header was compared with the record of the central
 * directory: a program that trusts one and a program that trusts the other must see the same file.
 */
export function dataStart(bytes: Uint8Array, record: CentralRecord, directoryStart: number): number {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const at = record.headerStart;
  if (at + fixedLength > directoryStart || view.getUint32(at, true) !== signature) throw disagreement(record.name);
  const nameStart = at + fixedLength;
  const nameEnd = nameStart + view.getUint16(at + 26, true);
  const start = nameEnd + view.getUint16(at + 28, true);
  const flags = view.getUint16(at + 6, true);
  const agrees =
    start + record.compressedSize <= directoryStart &&
    sameBytes(bytes.subarray(nameStart, nameEnd), record.nameBytes) &&
    view.getUint16(at + 8, true) === record.method &&
    (flags & encrypted) === (record.flags & encrypted) &&
    sizesAgree(view, at, record, (flags & sizesFollow) !== 0);
  if (!agrees) throw disagreement(record.name);
  return start;
}

/** Sizes that only follow the data are 0 here; those that stand in the zip64 field are all ones. */
function sizesAgree(view: DataView, at: number, record: CentralRecord, follow: boolean): boolean {
  const stated: [number, number][] = [
    [view.getUint32(at + 14, true), record.crc],
    [view.getUint32(at + 18, true), record.compressedSize],
    [view.getUint32(at + 22, true), record.size],
  ];
  return stated.every(
    ([here, there], index) => here === there || (follow && here === 0) || (index > 0 && here === elsewhere),
  );
}

function sameBytes(one: Uint8Array, other: Uint8Array): boolean {
  return one.length === other.length && one.every((byte, index) => byte === other[index]);
}

function disagreement(name: string): FileProblem {
  return new FileProblem(
    `The file is damaged or was tampered with: the part ${JSON.stringify(name.slice(0, 60))} is not what the list of its archive says; get a fresh copy of it.`,
  );
}
