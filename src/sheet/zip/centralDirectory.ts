import { FileProblem } from './fileProblem.js';

/** Where the central directory of a zip archive is, and what its end record says. */
interface CentralDirectory {
  readonly start: number;
  readonly end: number;
  readonly entries: number;
  /** Where the end record begins; all after it is comment. */
  readonly endRecord: number;
}

const endSignature = 0x06054b50;
const end64Signature = 0x06064b50;
const locatorSignature = 0x07064b50;
const endLength = 22;
const longestComment = 0xffff;

/** The format says to search from the end; an archive that was cut off has no end record. */
export function centralDirectory(bytes: Uint8Array): CentralDirectory {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const last = bytes.length - endLength;
  for (let at = last; at >= 0 && at >= last - longestComment; at--) {
    if (view.getUint32(at, true) !== endSignature) continue;
    const found = placeFrom(view, at);
    if (found !== undefined) return found;
  }
  throw new FileProblem(
    'The file is damaged: the end of its archive is missing, so it was cut off or only partly copied.',
  );
}

/** Undefined where the signature is there by chance: a real end record follows directly on its directory. */
function placeFrom(view: DataView, at: number): CentralDirectory | undefined {
  const disks = view.getUint16(at + 4, true) + view.getUint16(at + 6, true);
  const place = at >= 20 && view.getUint32(at - 20, true) === locatorSignature ? place64(view, at) : place32(view, at);
  if (place === undefined || place.start + place.length !== place.end) return undefined;
  if (disks !== 0 && disks !== 0x1fffe)
    throw new FileProblem('The file is one part of an archive that was split; join its parts first.');
  return { start: place.start, end: place.end, entries: place.entries, endRecord: at };
}

interface Place {
  readonly start: number;
  readonly length: number;
  readonly end: number;
  readonly entries: number;
}

function place32(view: DataView, at: number): Place {
  return {
    entries: view.getUint16(at + 10, true),
    length: view.getUint32(at + 12, true),
    start: view.getUint32(at + 16, true),
    end: at,
  };
}

function place64(view: DataView, at: number): Place | undefined {
  const record = Number(view.getBigUint64(at - 20 + 8, true));
  if (record + 56 > at - 20 || view.getUint32(record, true) !== end64Signature) return undefined;
  return {
    entries: Number(view.getBigUint64(record + 32, true)),
    length: Number(view.getBigUint64(record + 40, true)),
    start: Number(view.getBigUint64(record + 48, true)),
    end: record,
  };
}
