import { Inflate } from 'fflate';
import { crc32 } from './crc32.js';
import { FileProblem } from './fileProblem.js';
import type { ZipEntry } from './zipEntries.js';

/** The inflater gets little at a time, so that it cannot run far past the size that the archive states. */
const sliceLength = 16 * 1024;

/** The bytes of one part; unpacking stops where they exceed the stated size, and the checksum is verified. */
export function partOf(bytes: Uint8Array, entry: ZipEntry): Uint8Array {
  const packed = bytes.subarray(entry.dataStart, entry.dataStart + entry.compressedSize);
  const part = entry.method === 0 ? new Uint8Array(packed) : inflated(packed, entry);
  if (part.length !== entry.size || crc32(part) !== entry.crc) throw damaged(entry);
  return part;
}

function inflated(packed: Uint8Array, entry: ZipEntry): Uint8Array {
  const part = new Uint8Array(entry.size);
  let length = 0;
  const inflate = new Inflate((piece) => {
    if (length + piece.length > entry.size) throw damaged(entry);
    part.set(piece, length);
    length += piece.length;
  });
  try {
    for (let at = 0; at < packed.length; at += sliceLength) {
      inflate.push(packed.subarray(at, at + sliceLength), at + sliceLength >= packed.length);
    }
  } catch {
    throw damaged(entry);
  }
  if (length !== entry.size) throw damaged(entry);
  return part;
}

function damaged(entry: ZipEntry): FileProblem {
  return new FileProblem(
    `The file is damaged: its part ${JSON.stringify(entry.name.slice(0, 60))} does not have the size or the checksum that the archive states; get a fresh copy of it.`,
  );
}
