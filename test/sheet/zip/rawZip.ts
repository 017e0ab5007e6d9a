import { deflateRawSync } from 'node:zlib';
import { crc32 } from '../../../src/sheet/zip/crc32';

/** One part of an archive, and what its headers say where that is not the truth. */
export interface RawPart {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly method?: number;
  readonly stored?: boolean;
  readonly flags?: number;
  /** Sizes follow the data, with or without the signature. */
  readonly descriptor?: 'signed' | 'bare';
  readonly zip64?: boolean;
  readonly size?: number;
  readonly compressedSize?: number;
  readonly crc?: number;
  /** Only in the central directory. */
  readonly centralName?: string;
  readonly centralSize?: number;
  /** Local header of another part, by number. */
  readonly sharesWith?: number;
  readonly date?: number;
  readonly extra?: Uint8Array;
}

export interface RawArchive {
  readonly comment?: string;
  readonly entries?: number;
  readonly zip64?: boolean;
  readonly before?: Uint8Array;
  readonly after?: Uint8Array;
}

/** An archive as told: with this, headers can lie. */
export function rawZip(parts: readonly RawPart[], archive: RawArchive = {}): Uint8Array {
  const pieces: Buffer[] = [Buffer.from(archive.before ?? [])];
  const records: Buffer[] = [];
  const starts: number[] = [];
  let at = pieces[0]!.length;
  for (const part of parts) {
    const packed = part.stored === true ? Buffer.from(part.bytes) : deflateRawSync(part.bytes);
    const shared = part.sharesWith === undefined ? undefined : starts[part.sharesWith];
    starts.push(shared ?? at);
    const local = localHeader(part, packed.length);
    if (shared === undefined) {
      for (const piece of [local, packed, descriptor(part, packed.length)]) {
        pieces.push(piece);
        at += piece.length;
      }
    }
    records.push(centralRecord(part, packed.length, shared ?? starts[starts.length - 1]!));
  }
  const directory = Buffer.concat(records);
  const end = endOf(directory.length, { ...archive, entries: archive.entries ?? parts.length, start: at });
  return new Uint8Array(Buffer.concat([...pieces, directory, end, Buffer.from(archive.after ?? [])]));
}

function flagsOf(part: RawPart): number {
  return (part.flags ?? 0x0800) | (part.descriptor === undefined ? 0 : 8);
}

function methodOf(part: RawPart): number {
  return part.method ?? (part.stored === true ? 0 : 8);
}

function sizes(part: RawPart, packed: number): { size: number; compressed: number; crc: number } {
  return {
    size: part.size ?? part.bytes.length,
    compressed: part.compressedSize ?? packed,
    crc: part.crc ?? crc32(part.bytes),
  };
}

function localHeader(part: RawPart, packed: number): Buffer {
  const { size, compressed, crc } = sizes(part, packed);
  const later = part.descriptor !== undefined;
  const name = Buffer.from(part.name);
  const extra = Buffer.concat([
    part.zip64 === true ? wide([later ? 0 : size, later ? 0 : compressed]) : Buffer.alloc(0),
    Buffer.from(part.extra ?? []),
  ]);
  const header = Buffer.alloc(30);
  header.writeUInt32LE(0x04034b50, 0);
  header.writeUInt16LE(part.zip64 === true ? 45 : 20, 4);
  header.writeUInt16LE(flagsOf(part), 6);
  header.writeUInt16LE(methodOf(part), 8);
  header.writeUInt32LE(((part.date ?? 0x5821) * 65536 + 0x6000) >>> 0, 10);
  header.writeUInt32LE(later ? 0 : crc, 14);
  header.writeUInt32LE(part.zip64 === true ? 0xffffffff : later ? 0 : compressed, 18);
  header.writeUInt32LE(part.zip64 === true ? 0xffffffff : later ? 0 : size, 22);
  header.writeUInt16LE(name.length, 26);
  header.writeUInt16LE(extra.length, 28);
  return Buffer.concat([header, name, extra]);
}

function descriptor(part: RawPart, packed: number): Buffer {
  if (part.descriptor === undefined) return Buffer.alloc(0);
  const { size, compressed, crc } = sizes(part, packed);
  const words = part.zip64 === true ? [crc, compressed, 0, size, 0] : [crc, compressed, size];
  return words32(part.descriptor === 'signed' ? [0x08074b50, ...words] : words);
}

function centralRecord(part: RawPart, packed: number, start: number): Buffer {
  const { size, compressed, crc } = sizes(part, packed);
  const name = Buffer.from(part.centralName ?? part.name);
  const stated = part.centralSize ?? size;
  const extra = Buffer.concat([
    part.zip64 === true ? wide([stated, compressed, start]) : Buffer.alloc(0),
    Buffer.from(part.extra ?? []),
  ]);
  const record = Buffer.alloc(46);
  record.writeUInt32LE(0x02014b50, 0);
  record.writeUInt16LE(0x031e, 4);
  record.writeUInt16LE(20, 6);
  record.writeUInt16LE(flagsOf(part), 8);
  record.writeUInt16LE(methodOf(part), 10);
  record.writeUInt32LE(((part.date ?? 0x5821) * 65536 + 0x6000) >>> 0, 12);
  record.writeUInt32LE(crc, 16);
  record.writeUInt32LE(part.zip64 === true ? 0xffffffff : compressed, 20);
  record.writeUInt32LE(part.zip64 === true ? 0xffffffff : stated, 24);
  record.writeUInt16LE(name.length, 28);
  record.writeUInt16LE(extra.length, 30);
  record.writeUInt32LE(0x81a40000, 38);
  record.writeUInt32LE(part.zip64 === true ? 0xffffffff : start, 42);
  return Buffer.concat([record, name, extra]);
}

function endOf(length: number, archive: RawArchive & { entries: number; start: number }): Buffer {
  const comment = Buffer.from(archive.comment ?? '');
  const end = Buffer.alloc(22);
  end.writeUInt32LE(0x06054b50, 0);
  const wideEnd = archive.zip64 === true;
  const count = wideEnd ? 0xffff : Math.min(archive.entries, 0xffff);
  end.writeUInt16LE(count, 8);
  end.writeUInt16LE(count, 10);
  end.writeUInt32LE(wideEnd ? 0xffffffff : length, 12);
  end.writeUInt32LE(wideEnd ? 0xffffffff : archive.start, 16);
  end.writeUInt16LE(comment.length, 20);
  if (!wideEnd) return Buffer.concat([end, comment]);
  const record = Buffer.alloc(56);
  record.writeUInt32LE(0x06064b50, 0);
  record.writeBigUInt64LE(44n, 4);
  [archive.entries, archive.entries, length, archive.start].forEach((value, index) => {
    record.writeBigUInt64LE(BigInt(value), 24 + index * 8);
  });
  const locator = Buffer.alloc(20);
  locator.writeUInt32LE(0x07064b50, 0);
  locator.writeBigUInt64LE(BigInt(archive.start + length), 8);
  locator.writeUInt32LE(1, 16);
  return Buffer.concat([record, locator, end, comment]);
}

function wide(values: readonly number[]): Buffer {
  const field = Buffer.alloc(4 + values.length * 8);
  field.writeUInt16LE(1, 0);
  field.writeUInt16LE(values.length * 8, 2);
  values.forEach((value, index) => field.writeBigUInt64LE(BigInt(value), 4 + index * 8));
  return field;
}

function words32(values: readonly number[]): Buffer {
  const words = Buffer.alloc(values.length * 4);
  values.forEach((value, index) => words.writeUInt32LE(value, index * 4));
  return words;
}
