import { partOf } from '../../../src/sheet/zip/partOf';
import { zipEntries } from '../../../src/sheet/zip/zipEntries';
import { type RawPart, rawZip } from './rawZip';
import { refusal } from './refusal';

const bytes = new TextEncoder().encode('copper 2.1, '.repeat(500));
const only = (part: Partial<RawPart>): (() => Uint8Array) => {
  const file = rawZip([{ name: 'log.xml', bytes, ...part }]);
  const entry = zipEntries(file)[0]!;
  return () => partOf(file, entry);
};

describe('partOf', () => {
  it('gives the bytes of a part, packed or not', () => {
    expect(only({})()).toEqual(bytes);
    expect(only({ stored: true })()).toEqual(bytes);
    expect(only({ bytes: new Uint8Array(0) })()).toEqual(new Uint8Array(0));
  });

  it('refuses a size that is a lie either way', () => {
    expect(refusal(only({ size: bytes.length - 1 }))).toContain('size or the checksum');
    expect(refusal(only({ size: bytes.length + 1 }))).toContain('size or the checksum');
  });

  it('refuses a wrong checksum, cut and senseless data', () => {
    expect(refusal(only({ crc: 1 }))).toContain('checksum');
    expect(refusal(only({ stored: true, crc: 1 }))).toContain('checksum');
    expect(refusal(only({ compressedSize: 5 }))).toContain('checksum');
    expect(
      refusal(only({ bytes: Uint8Array.from({ length: 300 }, (_, i) => 255 - i), stored: true, method: 8 })),
    ).toContain('checksum');
  });

  it('stops a bomb that says it is small long before it has unfolded', () => {
    const zeros = new Uint8Array(150 * 1024 * 1024);
    const read = only({ bytes: zeros, size: 4096 });
    const before = process.memoryUsage().arrayBuffers;
    expect(refusal(read)).toContain('size');
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(64 * 1024 * 1024);
  });
});
