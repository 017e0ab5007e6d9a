import fc from 'fast-check';
import { readCsv } from '../../../src/sheet/csv/readCsv.js';
import { FileProblem } from '../../../src/sheet/zip/fileProblem.js';
import { csvBook, csvRefusal, csvValues } from './csvBook.js';

const march = (day: number, hour = 0): number => 46081 + day + hour / 24;

describe('readCsv', () => {
  it('gives a book of one sheet named after the file, rows as they stand', () => {
    const book = csvBook('My log\n\nDate,Copper\n2026-03-01,2.05\n', {}, 'shop/Tank 1.csv');
    expect(book).toMatchObject({ kind: 'csv', names: [], tables: [], date1904: false });
    expect(book.sheets.map(({ name, hidden }) => [name, hidden])).toEqual([['Tank 1', false]]);
    expect(book.sheets[0]?.rows).toEqual([
      [{ value: 'My log' }],
      undefined,
      [{ value: 'Date' }, { value: 'Copper' }],
      [{ value: march(1), format: 'yyyy-mm-dd' }, { value: 2.05 }],
    ]);
    expect(book.remarks).toEqual(['Read as UTF-8: fields separated by commas, decimal points ("2.05" in row 4).']);
  });

  it('leaves what is not plainly a number or a date as it is written', () => {
    const kept = ['<0.05', '2.1?', '~2.1', '25%', '2,05 ppm', '2.0-2.25', '1.05 x2', 'void 1.62', '-', ' LOW ', '0900'];
    const more = ['007', '=1+1', '=HYPERLINK("http://x")', '+x', '@x', '1E5', '2026-02-30', '2026-03-01T08:00Z'];
    const texts = [
      ...kept,
      ...more,
      '31/02/2026',
      '1 Mar',
      '12345678901234567890',
      "it's",
      '1:75',
      '24:00',
      '5.',
      '#8',
    ];
    const text = `Date;Copper\n${texts.map((each) => `"${each.replace(/"/g, '""')}";x`).join('\n')}`;
    expect(
      csvValues(text)
        .slice(1)
        .map(([value]) => value),
    ).toEqual(texts);
  });

  it('reads plain numbers with signs and spaces, truth values and error cells', () => {
    const text = 'a;b\n 2 ;+3\n-4;\u22125\n.5;2.50\n1e-7;1.5E+3\nTRUE;#N/A\n';
    expect(csvValues(text).slice(1)).toEqual([
      [2, 3],
      [-4, -5],
      [0.5, 2.5],
      [1e-7, 1500],
      [true, { type: 'Error', basicValue: '#N/A' }],
    ]);
  });

  it('follows quotes as RFC 4180 has them, and line ends of any kind', () => {
    expect(csvValues('a,b\r\n"x, y","say ""no"""\r\n')).toEqual([
      ['a', 'b'],
      ['x, y', 'say "no"'],
    ]);
    expect(csvValues('a,b\r"one\r\ntwo",3\r4,5')).toEqual([
      ['a', 'b'],
      ['one\r\ntwo', 3],
      [4, 5],
    ]);
    expect(csvValues('a, "b, c" ,d\n5" probe,"x"y,z')).toEqual([
      ['a', 'b, c', 'd'],
      ['5" probe', 'xy', 'z'],
    ]);
    expect(csvBook('a,b\n"one\ntwo",3\n').remarks[1]).toBe(
      'Rows are counted as records, and one row runs over several lines.',
    );
    expect(csvRefusal('a,b\n1,2\n3,"four\n5,6\n')).toMatch(/^In row 3 a quoted field never ends; /);
  });

  it('takes the mark that a first line sep= names, and does not count that line', () => {
    expect(csvValues('sep=;\r\na,b;c\r\nd,e;f\r\n')).toEqual([
      ['a,b', 'c'],
      ['d,e', 'f'],
    ]);
    expect(csvBook('sep=;\na;b\n').remarks[1]).toBe('Rows are counted below the line sep=.');
    expect(csvValues('sep=^\na^b\n')).toEqual([['a', 'b']]);
  });

  it('reads UTF-8 with and without its mark, UTF-16 of both kinds, and else western letters', () => {
    const text = 'Date,Temp °C,Note\n2026-03-01,25.5,Müller\n';
    const values = csvValues(text);
    const sixteen = (little: boolean): Uint8Array => {
      const bytes = new Uint8Array(2 + 2 * text.length);
      const view = new DataView(bytes.buffer);
      [...`\ufeff${text}`].forEach((letter, at) => view.setUint16(2 * at, letter.charCodeAt(0), little));
      return bytes;
    };
    const western = Uint8Array.from(`${text}price 5 \u0080,\n`, (letter) => letter.charCodeAt(0));
    const read = (bytes: Uint8Array) => readCsv(bytes, 'log.csv');
    const valuesOf = (bytes: Uint8Array) =>
      read(bytes).sheets[0]?.rows.map((row) => row?.map((cell) => cell?.value ?? null));
    expect(valuesOf(new TextEncoder().encode(`\ufeff${text}`))).toEqual(values);
    expect(valuesOf(sixteen(true))).toEqual(values);
    expect(valuesOf(sixteen(false))).toEqual(values);
    expect(valuesOf(western)).toEqual([...values, ['price 5 €', null]]);
    expect(read(sixteen(true)).remarks[0]).toMatch(/^Read as UTF-16: /);
    expect(read(western).remarks[0]).toMatch(/^Read as code page 1252 \(western European letters; it is not UTF-8\): /);
  });

  it('refuses what is no text, and what is too large', () => {
    const refused = (bytes: Uint8Array): string => {
      try {
        readCsv(bytes, 'x.csv');
        return '';
      } catch (fault) {
        return fault instanceof FileProblem ? fault.message : 'another fault';
      }
    };
    expect(refused(Uint8Array.of(0x50, 0x4b, 3, 4, 0, 0, 8, 0))).toMatch(/^The file is not text: /);
    expect(refused(Uint8Array.from({ length: 400 }, (_, at) => (at * 7) % 256 || 1))).toMatch(
      /^The file is not text: /,
    );
    expect(refused(new Uint8Array(64 * 1024 * 1024 + 1).fill(65))).toMatch(/^The file is over 64 MB, /);
    expect(refused(new Uint8Array(17_000).fill(44))).toMatch(/^Row 1 has 17001 fields, more than the 16384 columns /);
    expect(refused(new Uint8Array(1_048_577).fill(10))).toMatch(/^The file has over 1048576 rows, /);
  });

  it('takes an empty file for an empty sheet', () => {
    expect(csvValues('')).toEqual([]);
    expect(csvBook('', {}, '.csv').sheets[0]?.name).toBe('Sheet1');
  });

  it('gives a book or a reason for any bytes', () => {
    const piece = fc.constantFrom(
      ...[
        '"',
        '""',
        ',',
        ';',
        '\t',
        '|',
        '\r',
        '\n',
        '\r\n',
        ' ',
        "'",
        '=',
        '-',
        '+',
        '.',
        ':',
        '/',
        '1',
        '12',
        '13',
        '31',
      ],
      ...[
        '2026',
        '26',
        '1,234',
        '1.234',
        '2,05',
        '01/02/2026',
        '13.01.26',
        'Mar',
        'pm',
        'sep=',
        '\ufeff',
        '€',
        'time',
        '\u2212',
      ],
    );
    const bytes = fc.oneof(
      fc.array(piece, { maxLength: 60 }).map((pieces) => new TextEncoder().encode(pieces.join(''))),
      fc.uint8Array({ maxLength: 200 }),
      fc.string({ maxLength: 100, unit: 'binary' }).map((text) => new TextEncoder().encode(text)),
    );
    const options = fc.record(
      {
        delimiter: fc.constantFrom(',', ';', '\t'),
        decimal: fc.constantFrom('point' as const, 'comma' as const),
        dates: fc.constantFrom('day first' as const, 'month first' as const),
      },
      { requiredKeys: [] },
    );
    let refused = 0;
    fc.assert(
      fc.property(bytes, options, (given, terms) => {
        try {
          const [sheet] = readCsv(given, 'x.csv', terms).sheets;
          for (const row of sheet?.rows ?? []) {
            for (const cell of row ?? []) {
              if (typeof cell?.value === 'number') expect(Number.isFinite(cell.value)).toBe(true);
              if (cell?.value === null || cell?.value === '') throw new Error('a cell of nothing');
            }
          }
        } catch (fault) {
          if (!(fault instanceof FileProblem)) throw fault;
          expect(fault.message).toMatch(/^[A-Z].*[^.]$/s);
          refused++;
        }
      }),
      { numRuns: 3000, seed: 51 },
    );
    expect(refused).toBeGreaterThan(100);
  });

  it('reads 100,000 rows without a second look at each', () => {
    const rows = Array.from({ length: 100_000 }, (_, at) => {
      const day = String(1 + (at % 28)).padStart(2, '0');
      return `${day}/${String(1 + (Math.floor(at / 28) % 12)).padStart(2, '0')}/2026 08:00;${(2 + (at % 60) / 100).toFixed(2).replace('.', ',')};15;ate well, all of them`;
    });
    const bytes = new TextEncoder().encode(`Date;Copper;Dose mL;Notes\n${rows.join('\n')}\n`);
    const before = process.cpuUsage();
    const book = readCsv(bytes, 'long.csv');
    const took = process.cpuUsage(before).user / 1000;
    expect(book.sheets[0]?.rows.length).toBe(100_001);
    expect(took).toBeLessThan(3000);
  });
});
