import { unzipSync } from 'fflate';
import { partOf } from '../../../src/sheet/zip/partOf';
import { zipEntries, type ZipEntry } from '../../../src/sheet/zip/zipEntries';
import { zipWith } from '../../../src/sheet/zip/zipWith';
import { type RawArchive, type RawPart, rawZip } from './rawZip';
import { refusal } from './refusal';

const text = (words: string): Uint8Array => new TextEncoder().encode(words);
const macros = Uint8Array.from({ length: 5000 }, (_, index) => (index * 7919) % 251);
const extra = Uint8Array.from([0x55, 0x54, 5, 0, 3, 1, 2, 3, 4]);
const parts: readonly RawPart[] = [
  { name: 'mimetype', bytes: text('application/zip'), stored: true },
  { name: 'xl/worksheets/sheet1.xml', bytes: text('<sheet>old</sheet>'), date: 0x4a21, extra },
  { name: 'xl/vbaProject.bin', bytes: macros, descriptor: 'signed', date: 0x3c61, extra },
  { name: 'xl/media/größe.png', bytes: macros, stored: true, descriptor: 'bare' },
  { name: 'xl/wide.bin', bytes: macros, zip64: true },
  { name: 'xl/wide2.bin', bytes: macros, zip64: true, descriptor: 'signed', extra },
];
const made = (archive: RawArchive = {}): Uint8Array => rawZip(parts, archive);
const replaced = new Map([
  ['xl/worksheets/sheet1.xml', text('<sheet>new, and a good deal longer than the old one</sheet>')],
]);

/** All bytes of a part as they lie in the file, up to the next one, and its record but for its place. */
function raw(bytes: Uint8Array, name: string): { lies: string; record: string } {
  const entries = zipEntries(bytes);
  const entry = entries.find((one) => one.name === name)!;
  const directory = Math.min(...entries.map((one) => one.recordStart));
  const next = Math.min(
    directory,
    ...entries.map((one) => one.headerStart).filter((start) => start > entry.headerStart),
  );
  return { lies: hex(bytes.subarray(entry.headerStart, next)), record: hex(recordWithoutPlace(bytes, entry)) };
}

function recordWithoutPlace(bytes: Uint8Array, entry: ZipEntry): Uint8Array {
  const record = bytes.slice(entry.recordStart, entry.recordStart + entry.recordLength);
  const wide = new DataView(record.buffer).getUint32(42, true) === 0xffffffff;
  const nameEnd = 46 + entry.name.length + (entry.name.includes('ö') ? 2 : 0);
  return wide ? record.fill(0, nameEnd + 4 + 16, nameEnd + 4 + 24) : record.fill(0, 42, 46);
}

const hex = (bytes: Uint8Array): string => Buffer.from(bytes).toString('hex');

describe('zipWith', () => {
  it('gives the same for the bytes of a file as Node reads it, and leaves them as they were', () => {
    const before = made();
    const asRead = Buffer.concat([Buffer.from('before'), before, Buffer.from('after')]).subarray(6, 6 + before.length);
    expect(zipWith(asRead, replaced)).toEqual(zipWith(before, replaced));
    expect(new Uint8Array(asRead)).toEqual(new Uint8Array(before));
  });

  it('replaces a part and leaves all others byte for byte as they lie, in their order', () => {
    const before = made();
    const after = zipWith(before, replaced);
    expect(zipEntries(after).map((entry) => entry.name)).toEqual(parts.map((part) => part.name));
    for (const { name } of parts) {
      if (replaced.has(name)) continue;
      expect(raw(after, name)).toEqual(raw(before, name));
    }
    const sheet = zipEntries(after).find((entry) => entry.name === 'xl/worksheets/sheet1.xml')!;
    expect(partOf(after, sheet)).toEqual(replaced.get(sheet.name));
  });

  it('gives what another unpacker reads', () => {
    const read = unzipSync(zipWith(made(), replaced));
    expect(read['xl/vbaProject.bin']).toEqual(macros);
    expect(read['xl/media/größe.png']).toEqual(macros);
    expect(new TextDecoder().decode(read['xl/worksheets/sheet1.xml'])).toContain('new');
  });

  it('keeps the date and the fields of a replaced part, and drops its wide sizes', () => {
    const after = zipWith(made(), new Map([...replaced, ['xl/wide2.bin', text('small')]]));
    const view = new DataView(after.buffer);
    const [sheet, wide] = ['xl/worksheets/sheet1.xml', 'xl/wide2.bin'].map((name) =>
      zipEntries(after).find((one) => one.name === name)!,
    );
    expect(view.getUint16(sheet!.recordStart + 14, true)).toBe(0x4a21);
    expect(view.getUint16(sheet!.headerStart + 12, true)).toBe(0x4a21);
    expect(hex(recordOf(after, sheet!))).toContain(hex(extra));
    expect(hex(recordOf(after, wide!))).toContain(hex(extra));
    expect(view.getUint16(wide!.recordStart + 8, true) & 8).toBe(0);
    expect(new TextDecoder().decode(partOf(after, wide!))).toBe('small');
  });

  it('adds a part at the end, the same bytes each time', () => {
    const add = new Map([['xl/metadata.xml', text('<metadata/>')]]);
    const after = zipWith(made(), add);
    expect(zipEntries(after).map((entry) => entry.name)).toEqual([
      ...parts.map((part) => part.name),
      'xl/metadata.xml',
    ]);
    expect(zipWith(made(), add)).toEqual(after);
    expect(unzipSync(after)['xl/metadata.xml']).toEqual(text('<metadata/>'));
  });

  it('keeps the comment and what stands before and after', () => {
    const archive = { comment: 'kept by hand', before: text('#!/bin/sh\n'), after: text('\n') };
    const after = zipWith(made(archive), replaced);
    expect(new TextDecoder().decode(after).startsWith('#!/bin/sh\nPK')).toBe(true);
    expect(new TextDecoder().decode(after).endsWith('kept by hand\n')).toBe(true);
    expect(zipEntries(after)).toHaveLength(parts.length);
  });

  it('gives the same file where nothing is to be replaced', () => {
    expect(zipWith(made({ comment: 'c' }), new Map())).toEqual(made({ comment: 'c' }));
  });

  it('needs no wide end record in what it writes', () => {
    const after = zipWith(made({ zip64: true }), replaced);
    expect(Object.keys(unzipSync(after))).toHaveLength(parts.length);
    expect(zipEntries(after)).toHaveLength(parts.length);
  });

  it('leaves the first part of an open workbook unpacked, and its bytes as they are', () => {
    const after = zipWith(made(), new Map([['mimetype', text('application/x')]]));
    expect(zipEntries(after)[0]?.method).toBe(0);
    expect(new TextDecoder().decode(after.subarray(38, 51))).toBe('application/x');
  });

  it('refuses an archive that the guard refuses', () => {
    expect(refusal(() => zipWith(made().subarray(0, 900), replaced))).toContain('cut off');
  });
});

function recordOf(bytes: Uint8Array, entry: ZipEntry): Uint8Array {
  return bytes.subarray(entry.recordStart, entry.recordStart + entry.recordLength);
}
