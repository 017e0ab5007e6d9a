import { deflateRawSync } from 'node:zlib';
import { readBook } from '../../../src/sheet/read/readBook';
import { FileProblem } from '../../../src/sheet/zip/fileProblem';
import { rawZip } from '../zip/rawZip';
import { refusal } from '../zip/refusal';
import { odsNamespaces, odsOf } from './odsOf';
import { cellAt } from './values';
import { spreadsheetNamespace, xlsxOf } from './xlsxOf';

jest.setTimeout(120_000);

const names = ['__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty'];
const rows = (inner: string): string => `<row r="1">${inner}</row>`;
const text = (words: string): Uint8Array => new TextEncoder().encode(words);

/** What every object inherits, to be the same before and after. */
function inherited(): string {
  const own = [Object, Array, Function, String, Map].map((type) =>
    Object.getOwnPropertyNames(type.prototype).sort().join(),
  );
  return `${own.join(' ')} ${'polluted' in {}}`;
}

describe('readBook on names that objects know', () => {
  const before = inherited();
  afterEach(() => expect(inherited()).toBe(before));

  it.each(names)('reads sheets, names, texts, tables and headings called %s', (name) => {
    const book = readBook(
      xlsxOf({
        sheets: [
          [name, rows(`<c r="A1" t="s"><v>0</v></c><c r="B1" t="str"><v>${name}</v></c><c r="C1" s="1"><v>5</v></c>`)],
          ['polluted', ''],
        ],
        strings: `<si><t>${name}</t></si>`,
        formats: [name],
        names: `<definedName name="${name}" localSheetId="0">${name}!$A$1</definedName>`,
        tables: [
          `<table displayName="${name}" ref="A1:B2"><tableColumns><tableColumn name="${name}"/><tableColumn name="polluted"/></tableColumns></table>`,
        ],
      }),
      name,
    );
    expect(book.sheets.map((sheet) => sheet.name)).toEqual([name, 'polluted']);
    expect([cellAt(book, 'A1'), cellAt(book, 'B1')]).toEqual([{ value: name }, { value: name }]);
    expect(cellAt(book, 'C1')?.format).toBe(name);
    expect(book.names).toEqual([{ name, formula: `${name}!$A$1`, sheet: name }]);
    expect(book.tables).toMatchObject([{ name, sheet: name, columns: [name, 'polluted'] }]);
  });

  it.each(names)('reads an .ods file with all of them called %s', (name) => {
    const book = readBook(
      odsOf({
        styles: `<number:date-style style:name="${name}"><number:year/></number:date-style><style:style style:name="${name}" style:data-style-name="${name}"/>`,
        body:
          `<table:table table:name="${name}"><table:table-row><table:table-cell table:style-name="${name}" office:value-type="string"><text:p>${name}</text:p></table:table-cell></table:table-row></table:table>` +
          `<table:named-expressions><table:named-range table:name="${name}" table:cell-range-address="$${name}.$A$1"/></table:named-expressions>` +
          `<table:database-ranges><table:database-range table:name="${name}" table:target-range-address="${name}.A1:${name}.A2"/></table:database-ranges>`,
      }),
      name,
    );
    expect(cellAt(book, 'A1')).toEqual({ value: name, format: 'yy' });
    expect(book.names).toEqual([{ name, formula: `${name}!$A$1` }]);
    expect(book.tables).toMatchObject([{ name, sheet: name, columns: [name] }]);
  });

  it.each(names)('takes %s for no relation, part, attribute or place', (name) => {
    const polluting = (part: string, xml: string): Uint8Array =>
      xlsxOf({ sheets: { Log: '' }, parts: { [part]: xml } });
    const main = `xmlns="${spreadsheetNamespace}"`;
    const sheet = 'xl/worksheets/sheet1.xml';
    const cases = [
      polluting(sheet, `<worksheet ${main}><sheetData><row r="${name}"><c r="A1"/></row></sheetData></worksheet>`),
      polluting(sheet, `<worksheet ${main}><sheetData><row r="1"><c r="${name}"/></row></sheetData></worksheet>`),
      polluting(sheet, `<worksheet ${main} ${name}="polluted" xmlns:${name}="polluted" ${name}:x="polluted"/>`),
      polluting('xl/sharedStrings.xml', `<sst ${main} ${name}="polluted"><${name}><si/></${name}></sst>`),
      polluting(`xl/${name}`, name),
    ];
    for (const bytes of cases) bookOrProblem(bytes);
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });
});

describe('readBook on XML that unfolds', () => {
  const entities =
    '<!DOCTYPE lolz [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;"><!ENTITY x SYSTEM "file:///etc/hostname">]>';
  const sheet = (before: string, use: string): string =>
    `${before}<worksheet xmlns="${spreadsheetNamespace}"><sheetData><row><c t="str"><v>${use}</v></c></row></sheetData></worksheet>`;
  const withPart = (part: string, xml: string | Uint8Array) => () =>
    readBook(xlsxOf({ sheets: { Log: '' }, tables: ['<table ref="A1:B2"/>'], parts: { [part]: xml } }), 'log.xlsx');

  it.each([
    'xl/workbook.xml',
    'xl/sharedStrings.xml',
    'xl/styles.xml',
    'xl/metadata.xml',
    'xl/worksheets/sheet1.xml',
    'xl/tables/table1.xml',
    'xl/_rels/workbook.xml.rels',
    'xl/worksheets/_rels/sheet1.xml.rels',
    '_rels/.rels',
  ])('refuses a document type in %s', (part) => {
    expect(refusal(withPart(part, `${entities}<worksheet/>`))).toContain('document type');
  });

  it('refuses it behind a declaration, a long comment, in small letters, and in UTF-16', () => {
    const part = 'xl/worksheets/sheet1.xml';
    const long = `<?xml version="1.0"?>\n<!-- ${'x'.repeat(300_000)} -->${entities}`;
    expect(refusal(withPart(part, sheet(long, '&b;')))).toContain('document type');
    expect(refusal(withPart(part, sheet('<!doctype x>', '')))).toMatch(/document type|well-formed/);
    const wide = Uint8Array.from([0xff, 0xfe, ...Buffer.from(sheet(entities, '&b;'), 'utf16le')]);
    expect(refusal(withPart(part, wide))).toContain('document type');
    const unmarked = Uint8Array.from(Buffer.from(sheet(entities, '&b;'), 'utf16le').swap16());
    expect(refusal(withPart(part, unmarked))).toContain('document type');
  });

  it('refuses it in both parts of an .ods file', () => {
    for (const part of ['content.xml', 'styles.xml']) {
      const xml = `${entities}<office:document-content ${odsNamespaces}/>`;
      expect(refusal(() => readBook(odsOf({ body: '', parts: { [part]: xml } }), 'log.ods'))).toContain(
        'document type',
      );
    }
  });

  it('refuses an entity that nothing declares, depths and attributes without end', () => {
    const part = 'xl/worksheets/sheet1.xml';
    expect(refusal(withPart(part, sheet('', '&lol;')))).toContain('well-formed');
    const deep = `<worksheet xmlns="${spreadsheetNamespace}">${'<a>'.repeat(300_000)}${'</a>'.repeat(300_000)}</worksheet>`;
    expect(refusal(withPart(part, deep))).toContain('well-formed');
    const many = Array.from({ length: 50_000 }, (_, index) => `a${index}=""`).join(' ');
    expect(refusal(withPart(part, `<worksheet ${many}/>`))).toContain('well-formed');
  });
});

describe('readBook on bombs', () => {
  it('refuses a few hundred kilobytes that claim gigabytes, and uses next to no memory', () => {
    const gigabyte = deflateRawSync(new Uint8Array(400 * 1024 * 1024));
    expect(gigabyte.length).toBeLessThan(450 * 1024);
    const bomb = (size: number): Uint8Array =>
      rawZip([
        { name: '_rels/.rels', bytes: text('<Relationships/>') },
        { name: 'xl/workbook.xml', bytes: gigabyte, stored: true, method: 8, size },
      ]);
    const before = process.memoryUsage();
    expect(refusal(() => readBook(bomb(400 * 1024 * 1024), 'log.xlsx'))).toContain('unpacks to 400 MB');
    expect(refusal(() => readBook(bomb(4_000_000_000), 'log.xlsx'))).toContain('unpacks to');
    expect(refusal(() => readBook(bomb(2000), 'log.xlsx'))).toContain('size or the checksum');
    const after = process.memoryUsage();
    expect(after.heapUsed + after.arrayBuffers - before.heapUsed - before.arrayBuffers).toBeLessThan(100 * 1024 * 1024);
  });

  it('refuses one in the first part it looks at', () => {
    const zeros = new Uint8Array(60 * 1024 * 1024);
    const bytes = rawZip([
      { name: 'mimetype', bytes: zeros, size: 46 },
      { name: 'content.xml', bytes: zeros, size: 100 },
    ]);
    expect(refusal(() => readBook(bytes, 'log.ods'))).toContain('size or the checksum');
  });
});

describe('readBook on broken files', () => {
  const good = [
    xlsxOf({
      sheets: {
        Log: rows('<c r="A1" t="s"><v>0</v></c><c r="B1" s="1"><v>45000.5</v></c><c r="C1"><f>A1</f><v>1</v></c>'),
        Card: '',
      },
      strings: '<si><t>copper</t></si>',
      formats: ['yyyy-mm-dd'],
      names: '<definedName name="x">Log!$A$1</definedName>',
      tables: ['<table displayName="T" ref="A1:B2"><tableColumns><tableColumn name="a"/></tableColumns></table>'],
    }),
    odsOf({
      body: '<table:table table:name="Log"><table:table-row><table:table-cell office:value-type="float" office:value="2" table:formula="of:=[.A1]"><text:p>2</text:p></table:table-cell></table:table-row></table:table>',
    }),
  ];

  it('refuses or reads every cut, and throws nothing else', () => {
    for (const bytes of good) {
      for (let length = 0; length < bytes.length; length += 13) {
        expect(bookOrProblem(bytes.subarray(0, length))).toBe('problem');
      }
      expect(bookOrProblem(bytes)).toBe('book');
    }
  });

  it('refuses or reads bytes turned at random, and throws nothing else', () => {
    const random = randoms(20260329);
    const found = { book: 0, problem: 0 };
    for (const bytes of good) {
      for (let round = 0; round < 600; round++) {
        const turned = bytes.slice();
        for (let times = 1 + (random() % 4); times > 0; times--) turned[random() % turned.length] = random() % 256;
        found[bookOrProblem(turned)]++;
      }
    }
    expect(found.problem).toBeGreaterThan(600);
    expect(found.book).toBeGreaterThan(0);
  });

  it('refuses or reads XML turned at random behind a right checksum, and throws nothing else', () => {
    const random = randoms(20261125);
    const found = { book: 0, problem: 0 };
    const marks = [
      '<',
      '>',
      '"',
      '/',
      '&',
      ';',
      '=',
      ' ',
      '0',
      '-1',
      '9999999',
      'A1',
      '\0',
      '<c>',
      '</c>',
      '<row r="0">',
      'r="',
      '_x0000_',
    ];
    for (const make of [turnedXlsx, turnedOds]) {
      for (let round = 0; round < 600; round++) {
        found[
          bookOrProblem(
            make((xml) => {
              const at = random() % xml.length;
              return xml.slice(0, at) + (marks[random() % marks.length] ?? '') + xml.slice(at + (random() % 3));
            }),
          )
        ]++;
      }
    }
    expect(found.problem).toBeGreaterThan(200);
    expect(found.book).toBeGreaterThan(200);
  });
});

function turnedXlsx(turned: (xml: string) => string): Uint8Array {
  const sheet = `<worksheet xmlns="${spreadsheetNamespace}"><cols><col min="1" max="3" width="9"/></cols><sheetData><row r="1"><c r="A1" t="s" s="1"><v>0</v></c><c r="B1" cm="1"><f t="array" ref="B1:C2">X(A1)</f><v>2</v></c></row><row r="2"><c r="A2"><f t="shared" si="0" ref="A2:A3">B2</f></c></row><row r="3"><c r="A3"><f t="shared" si="0"/></c><c t="inlineStr"><is><t>x</t></is></c></row></sheetData><mergeCells><mergeCell ref="A1:B2"/></mergeCells></worksheet>`;
  return xlsxOf({
    sheets: { Log: '' },
    strings: '<si><t>x</t></si>',
    formats: ['d'],
    parts: { 'xl/worksheets/sheet1.xml': turned(sheet) },
  });
}

function turnedOds(turned: (xml: string) => string): Uint8Array {
  const body =
    '<table:table table:name="Log"><table:table-column table:number-columns-repeated="3"/><table:table-row table:number-rows-repeated="2"><table:table-cell office:value-type="float" office:value="2" table:formula="of:=SUM([.A1:.B2];1)" table:number-columns-repeated="2"><text:p>2</text:p></table:table-cell><table:table-cell office:value-type="date" office:date-value="2026-03-29"/></table:table-row></table:table><table:named-expressions><table:named-range table:name="x" table:cell-range-address="$Log.$A$1"/></table:named-expressions>';
  return odsOf({ body: turned(body) });
}

function bookOrProblem(bytes: Uint8Array): 'book' | 'problem' {
  try {
    expect(readBook(bytes, 'log.xlsx').sheets.length).toBeGreaterThan(0);
    return 'book';
  } catch (error) {
    if (error instanceof FileProblem) return 'problem';
    throw error;
  }
}

function randoms(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state >>> 8;
  };
}
