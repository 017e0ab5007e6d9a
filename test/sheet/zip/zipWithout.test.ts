import { strToU8, unzipSync, zipSync } from 'fflate';
import { zipEntries } from '../../../src/sheet/zip/zipEntries';
import { zipWith } from '../../../src/sheet/zip/zipWith';

const letters = (text: string, times: number): Uint8Array => strToU8(text.repeat(times));

describe('zipWith, given null for a part', () => {
  const file = zipSync(
    { 'a.xml': letters('a', 999), 'b.xml': [letters('b', 77), { level: 0 }], 'c.xml': letters('c', 1234) },
    { mtime: new Date(2026, 2, 1), comment: 'kept' },
  );

  it.each([
    [['a.xml'], ['b.xml', 'c.xml']],
    [['b.xml'], ['a.xml', 'c.xml']],
    [['c.xml', 'a.xml'], ['b.xml']],
    [['z.xml'], ['a.xml', 'b.xml', 'c.xml']],
  ])('takes away %j and leaves %j as they are packed', (names, left) => {
    const after = zipWith(file, new Map(names.map((name) => [name, null])));
    const packed = (bytes: Uint8Array): [string, string][] =>
      zipEntries(bytes)
        .filter(({ name }) => left.includes(name))
        .map(({ name, dataStart, compressedSize }) => [
          name,
          Buffer.from(bytes.subarray(dataStart, dataStart + compressedSize)).toString('base64'),
        ]);
    expect(zipEntries(after).map(({ name }) => name)).toEqual(left);
    expect(packed(after)).toEqual(packed(file));
    expect(Object.keys(unzipSync(after))).toEqual(left);
  });
});
