import { zipSync } from 'fflate';
import { partOf } from '../../../src/sheet/zip/partOf';
import { zipEntries } from '../../../src/sheet/zip/zipEntries';
import { type RawPart, rawZip } from './rawZip';
import { refusal } from './refusal';

const text = (words: string): Uint8Array => new TextEncoder().encode(words);
const read = (bytes: Uint8Array): string[] =>
  zipEntries(bytes).map((entry) => `${entry.name}: ${new TextDecoder().decode(partOf(bytes, entry))}`);
const log: RawPart = { name: 'log.xml', bytes: text('<log>copper 2.1</log>'.repeat(20)) };
const note: RawPart = { name: 'a/note.txt', bytes: text('day three') };
const both = [`log.xml: ${'<log>copper 2.1</log>'.repeat(20)}`, 'a/note.txt: day three'];

describe('zipEntries', () => {
  it('reads what another packer wrote', () => {
    const bytes = zipSync({ 'log.xml': [log.bytes, { level: 9 }], 'a/note.txt': [note.bytes, { level: 0 }] });
    expect(read(bytes)).toEqual(both);
  });

  it.each<[string, Partial<RawPart>]>([
    ['sizes before the data', {}],
    ['stored as it is', { stored: true }],
    ['sizes after the data', { descriptor: 'signed' }],
    ['sizes after the data, without their mark', { descriptor: 'bare' }],
    ['wide sizes', { zip64: true }],
    ['wide sizes after the data', { zip64: true, descriptor: 'signed' }],
    ['fields of its own', { extra: Uint8Array.from([0x55, 0x54, 5, 0, 3, 1, 2, 3, 4]) }],
  ])('reads parts with %s', (_, as) => {
    expect(
      read(
        rawZip([
          { ...log, ...as },
          { ...note, ...as },
        ]),
      ),
    ).toEqual(both);
  });

  it('reads a comment, a wide end record, and bytes that a mail program left behind', () => {
    expect(read(rawZip([log, note], { comment: 'kept by hand' }))).toEqual(both);
    expect(read(rawZip([log, note], { zip64: true }))).toEqual(both);
    expect(read(rawZip([log, note], { after: text('\r\n\0\0\0') }))).toEqual(both);
    expect(read(rawZip([log, note], { comment: 'PK\x05\x06 is how an archive ends, 22 bytes of it' }))).toEqual(both);
  });

  it('refuses more parts than a workbook has, by what the archive says and by what it holds', () => {
    const small: RawPart = { name: '', bytes: new Uint8Array(0), stored: true };
    const many = Array.from({ length: 100_000 }, (_, index) => ({ ...small, name: `p${index}` }));
    const wide = rawZip(many, { zip64: true });
    expect(refusal(() => zipEntries(wide))).toContain('more than 10,000 parts');
    expect(refusal(() => zipEntries(rawZip(many)))).toContain('more than 10,000 parts');
    expect(refusal(() => zipEntries(rawZip(many, { entries: 3 })))).toContain('more than 10,000 parts');
    expect(refusal(() => zipEntries(rawZip([log, note], { entries: 3 })))).toContain(
      'does not hold as many parts as it says',
    );
  });

  it('refuses a claim of gigabytes, in one part, in all together, and by how dense it is', () => {
    const claims = (size: number, count: number): Uint8Array =>
      rawZip(Array.from({ length: count }, (_, index) => ({ ...log, name: `p${index}`, size })));
    expect(refusal(() => zipEntries(claims(3_000_000_000, 1)))).toContain('unpacks to 2861 MB');
    expect(refusal(() => zipEntries(claims(8_000_000, 100)))).toContain('unpacks to 763 MB');
    expect(refusal(() => zipEntries(claims(9_000_000, 1)))).toContain('unpacks to 9 MB');
    expect(refusal(() => zipEntries(rawZip([{ ...log, stored: true, size: 10 }])))).toContain('unpacks to');
  });

  it('refuses parts that lie on top of each other', () => {
    const bytes = rawZip([log, { ...log, sharesWith: 0, name: 'log.xml' }, note]);
    expect(refusal(() => zipEntries(bytes))).toContain('twice');
    const [entry] = zipEntries(rawZip([log]));
    const inner = rawZip([{ ...log, compressedSize: entry!.compressedSize + 40 }, note]);
    expect(refusal(() => zipEntries(inner))).toContain('on top of each other');
  });

  it.each([
    ['../log.xml'],
    ['xl/../../log.xml'],
    ['/xl/log.xml'],
    ['C:/log.xml'],
    ['xl\\log.xml'],
    ['log.xml\0.txt'],
    ['./log.xml'],
    [''],
  ])('refuses a part named %j', (name) => {
    expect(refusal(() => zipEntries(rawZip([{ ...log, name }])))).toContain('tampered');
  });

  it('refuses a name that comes twice, capital letters or not', () => {
    expect(refusal(() => zipEntries(rawZip([log, { ...log, name: 'LOG.xml' }])))).toContain('twice');
  });

  it('refuses what is locked or packed in a way it does not know', () => {
    expect(refusal(() => zipEntries(rawZip([{ ...log, flags: 0x801 }])))).toContain('password');
    expect(refusal(() => zipEntries(rawZip([{ ...log, method: 12 }])))).toContain('packed in a way');
  });

  it('refuses a part of which the list says something else than its header', () => {
    expect(refusal(() => zipEntries(rawZip([{ ...log, centralName: 'gol.xml' }])))).toContain('not what the list');
    expect(refusal(() => zipEntries(rawZip([{ ...log, centralSize: 5 }])))).toContain('not what the list');
  });

  it('refuses an archive that was cut off', () => {
    const bytes = rawZip([log, note]);
    for (let length = 0; length < bytes.length; length += 7) {
      expect(refusal(() => zipEntries(bytes.subarray(0, length)))).toContain('cut off');
    }
  });

  it('keeps names as they are, whatever they mean to a program', () => {
    const bytes = rawZip([
      { ...note, name: '__proto__' },
      { ...note, name: 'constructor' },
      { ...note, name: 'größe.xml' },
    ]);
    expect(zipEntries(bytes).map((entry) => entry.name)).toEqual(['__proto__', 'constructor', 'größe.xml']);
  });
});
