import { FileProblem } from './fileProblem.js';

/** One record of the central directory, sizes and place taken from its zip64 field where they stand there. */
export interface CentralRecord {
  readonly name: string;
  readonly nameBytes: Uint8Array;
  readonly flags: number;
  readonly method: number;
  readonly crc: number;
  readonly compressedSize: number;
  readonly size: number;
  readonly headerStart: number;
  readonly recordStart: number;
  readonly recordLength: number;
}

const signature = 0x02014b50;
const fixedLength = 46;
const elsewhere = 0xffffffff;

const damaged = 'The file is damaged: the list of the parts in its archive cannot be read; get a fresh copy of it.';

/** @param end where the central directory ends: nothing is read past it. */
export function centralRecord(bytes: Uint8Array, at: number, end: number): CentralRecord {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (at + fixedLength > end || view.getUint32(at, true) !== signature) throw new FileProblem(damaged);
  const nameEnd = at + fixedLength + view.getUint16(at + 28, true);
  const extraEnd = nameEnd + view.getUint16(at + 30, true);
  const recordEnd = extraEnd + view.getUint16(at + 32, true);
  if (recordEnd > end) throw new FileProblem(damaged);
  const flags = view.getUint16(at + 8, true);
  const nameBytes = bytes.subarray(at + fixedLength, nameEnd);
  const [size, compressedSize, headerStart] = wideSizes(view, { at: nameEnd, end: extraEnd }, [
    view.getUint32(at + 24, true),
    view.getUint32(at + 20, true),
    view.getUint32(at + 42, true),
  ]);
  return {
    name: nameText(nameBytes, flags),
    nameBytes,
    flags,
    method: view.getUint16(at + 10, true),
    crc: view.getUint32(at + 16, true),
    size: size ?? 0,
    compressedSize: compressedSize ?? 0,
    headerStart: headerStart ?? 0,
    recordStart: at,
    recordLength: recordEnd - at,
  };
}

/** The zip64 field holds only those of the values that did not fit, in this order. */
function wideSizes(view: DataView, extra: { at: number; end: number }, narrow: readonly number[]): number[] {
  if (!narrow.includes(elsewhere)) return [...narrow];
  for (let at = extra.at; at + 4 <= extra.end; at += 4 + view.getUint16(at + 2, true)) {
    if (view.getUint16(at, true) !== 1) continue;
    const fieldEnd = Math.min(extra.end, at + 4 + view.getUint16(at + 2, true));
    let next = at + 4;
    return narrow.map((value) => {
      if (value !== elsewhere) return value;
      if (next + 8 > fieldEnd) throw new FileProblem(damaged);
      next += 8;
      return Number(view.getBigUint64(next - 8, true));
    });
  }
  return [...narrow];
}

/** Without the flag for UTF-8 each byte stands for itself: such names are never shown, only compared. */
function nameText(bytes: Uint8Array, flags: number): string {
  if ((flags & 0x800) !== 0) return new TextDecoder().decode(bytes);
  return bytes.reduce((text, byte) => text + String.fromCharCode(byte), '');
}
