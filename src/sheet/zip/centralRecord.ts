import { FileProblem } from './fileProblem.js';

/** One record of the central directory, with sizes and place from its zip64 field where it has one. */
export interface CentralRecord {
  readonly name: string;
  readonly nameBytes: Uint8Array;
  readonly flags: number;
  /** 0: stored as it is, 8: deflated. */
  readonly method: number;
  readonly crc: number;
  readonly compressedSize: number;
  readonly size: number;
  /** Where the local header of the part begins. */
  readonly headerStart: number;
  /** Where the record itself begins, and its length. */
  readonly recordStart: number;
  readonly recordLength: number;
}

const signature = 0x02014b50;
const fixedLength = 46;
const elsewhere = 0xffffffff;
const zip64 = 1;

const damaged = 'The file is damaged: the list of the parts in its archive cannot be read; get a fresh copy of it.';

/** @param end where the central directory ends: nothing is read past it. */
export function centralRecord(bytes: Uint8Array, at: number, end: number): CentralRecord {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (at + fixedLength > end || view.getUint32(at, true) !== signature) throw new FileProblem(damaged);
  const { nameStart, extraStart, commentStart } = recordPlaces(view, at);
  const recordEnd = commentStart + view.getUint16(at + 32, true);
  if (recordEnd > end) throw new FileProblem(damaged);
  const flags = view.getUint16(at + 8, true);
  const nameBytes = bytes.subarray(nameStart, extraStart);
  const [size, compressedSize, headerStart] = wideSizes(view, { from: extraStart, to: commentStart }, [
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

/** Where the fields of variable length begin in a record. */
export function recordPlaces(
  view: DataView,
  at: number,
): { readonly nameStart: number; readonly extraStart: number; readonly commentStart: number } {
  const nameStart = at + fixedLength;
  const extraStart = nameStart + view.getUint16(at + 28, true);
  return { nameStart, extraStart, commentStart: extraStart + view.getUint16(at + 30, true) };
}

/** An extra field: its header of four bytes is at `from`. */
interface ExtraField {
  readonly isZip64: boolean;
  readonly from: number;
  readonly to: number;
}

export function extraFields(
  view: DataView,
  { from, to }: { readonly from: number; readonly to: number },
): ExtraField[] {
  const fields: ExtraField[] = [];
  for (let at = from, next; at + 4 <= to; at = next) {
    next = Math.min(to, at + 4 + view.getUint16(at + 2, true));
    fields.push({ isZip64: view.getUint16(at, true) === zip64, from: at, to: next });
  }
  return fields;
}

/** The zip64 field holds only those of the values that did not fit, in this order. */
function wideSizes(view: DataView, extra: { from: number; to: number }, narrow: readonly number[]): number[] {
  const field = narrow.includes(elsewhere) ? extraFields(view, extra).find(({ isZip64 }) => isZip64) : undefined;
  if (field === undefined) return [...narrow];
  let next = field.from + 4;
  return narrow.map((value) => {
    if (value !== elsewhere) return value;
    if (next + 8 > field.to) throw new FileProblem(damaged);
    next += 8;
    return Number(view.getBigUint64(next - 8, true));
  });
}

/** A record of the central directory as it was, but for the place where its part now begins. */
export function movedRecord(record: Uint8Array, headerStart: number): Uint8Array {
  // Not slice(): of the bytes of a file read by Node it gives no copy.
  const moved = new Uint8Array(record);
  const view = new DataView(moved.buffer);
  if (view.getUint32(42, true) !== elsewhere) view.setUint32(42, headerStart, true);
  else view.setBigUint64(widePlace(view), BigInt(headerStart), true);
  return moved;
}

/** In the zip64 field the place stands behind the sizes that did not fit. */
function widePlace(view: DataView): number {
  const { extraStart, commentStart } = recordPlaces(view, 0);
  const field = extraFields(view, { from: extraStart, to: commentStart }).find(({ isZip64 }) => isZip64);
  if (field === undefined) throw new Error('a place that is neither in the record nor in its zip64 field');
  const sizes = [20, 24].filter((at) => view.getUint32(at, true) === elsewhere).length;
  return field.from + 4 + 8 * sizes;
}

/** Without the flag for UTF-8 each byte stands for itself: such names are never shown, only compared. */
function nameText(bytes: Uint8Array, flags: number): string {
  if ((flags & 0x800) !== 0) return new TextDecoder().decode(bytes);
  return bytes.reduce((text, byte) => text + String.fromCharCode(byte), '');
}
