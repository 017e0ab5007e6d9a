import { zipSync } from 'fflate';
import { fileKind } from '../../../src/sheet/read/fileKind';
import { readBook } from '../../../src/sheet/read/readBook';
import { refusal } from '../zip/refusal';
import { xlsxOf, zipped } from '../book/xlsxOf';

const bytes = (text: string): Uint8Array => Uint8Array.from(Buffer.from(text, 'latin1'));
const compound = '\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1';
const wide = (text: string): string => Buffer.from(text, 'utf16le').toString('latin1');

describe('fileKind', () => {
  it.each([
    ['', 'empty'],
    [`${compound}${'\0'.repeat(600)}${wide('Workbook')}`, 'old'],
    [`${compound}${'\0'.repeat(600)}${wide('EncryptedPackage')}`, 'encrypted'],
    ['%PDF-1.7 ...', 'document'],
    ['{\\rtf1', 'document'],
    ['\x1f\x8b\x08', 'packed'],
    ['\x89PNG\r\n', 'picture'],
    ['<!DOCTYPE html><html>', 'markup'],
    ['\xef\xbb\xbf  <html xmlns="x">', 'markup'],
    ['<table border=1><tr><td>', 'markup'],
    ['<?xml version="1.0"?><Workbook xmlns="urn:x">', 'workbook-xml'],
    ['<?xml version="1.0"?><office:document xmlns:office="urn:x">', 'workbook-xml'],
    ['\x01\x02\0\x03 not text', 'binary'],
    ['Time,Copper\n2026-03-02,2.1\n', 'text'],
    ['<0.05;2\n', 'text'],
    ['<LOD;2\n', 'text'],
    [`\xff\xfe${wide('Time;Copper')}`, 'text'],
    [wide('Time;Copper;Note;x'), 'text'],
    ['PK\x03\x04', 'zip'],
    ['PK, a note\n', 'text'],
  ])('%j is %s', (start, kind) => {
    expect(fileKind(bytes(start))).toBe(kind);
  });
});

describe('readBook on other files', () => {
  it.each([
    [bytes(''), 'is empty'],
    [bytes(`${compound}x`), 'save it as .xlsx'],
    [bytes('%PDF-1.7'), 'as .xlsx'],
    [bytes('<html></html>'), 'web page'],
    [bytes('\x89PNG'), 'picture'],
    [bytes('\x1f\x8b'), 'unpack it'],
    [bytes('\0\0\x01'), 'neither a workbook nor text'],
    [zipSync({ 'notes.txt': bytes('x') }), 'no workbook in it'],
    [zipped({ mimetype: 'application/vnd.oasis.opendocument.text', 'content.xml': '<x/>' }), 'no workbook; copy'],
    [zipped({ '[Content_Types].xml': '<Types/>', 'word/document.xml': '<x/>' }), 'no workbook; copy'],
    [zipped({ '[Content_Types].xml': '<Types/>', 'xl/workbook.bin': 'x' }), '(.xlsb)'],
    [xlsxOf({ sheets: {} }), 'no sheet'],
  ])('refuses it and says what to do (%#)', (file, words) => {
    expect(refusal(() => readBook(file, 'log.xlsx'))).toContain(words);
  });

  it('names the part that is missing', () => {
    const relations = '<Relationships><Relationship Type="x/officeDocument" Target="xl/workbook.xml"/></Relationships>';
    expect(refusal(() => readBook(zipped({ '_rels/.rels': relations }), 'log.xlsx'))).toContain('is missing');
  });

  it('hands text to the reader of text', () => {
    const book = readBook(bytes('Time,Copper\n2026-03-02 08:00,2.1\n'), 'log.csv');
    expect(book.kind).toBe('csv');
    expect(book.sheets[0]?.rows[1]?.[1]?.value).toBe(2.1);
  });
});
