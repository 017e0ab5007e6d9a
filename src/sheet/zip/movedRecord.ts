const elsewhere = 0xffffffff;
const zip64 = 1;

/** A record of the central directory as it was, but for the place where its part now begins. */
export function movedRecord(record: Uint8Array, headerStart: number): Uint8Array {
  // Not slice(): of the bytes of a file read by Node it gives no copy.
  const moved = new Uint8Array(record);
  const view = new DataView(moved.buffer);
  if (view.getUint32(42, true) !== elsewhere) view.setUint32(42, headerStart, true);
  else view.setBigUint64(placeIn(view), BigInt(headerStart), true);
  return moved;
}

/** The zip64 field holds the sizes that did not fit, then the place; without such a field 42 is the place after all. */
function placeIn(view: DataView): number {
  const nameEnd = 46 + view.getUint16(28, true);
  const extraEnd = nameEnd + view.getUint16(30, true);
  for (let at = nameEnd; at + 4 <= extraEnd; at += 4 + view.getUint16(at + 2, true)) {
    if (view.getUint16(at, true) !== zip64) continue;
    const sizes = [20, 24].filter((field) => view.getUint32(field, true) === elsewhere).length;
    return at + 4 + 8 * sizes;
  }
  throw new Error('a place that is neither in the record nor in its zip64 field');
}
