import { isInside } from '../../../src/sheet/address/cellRange.js';
import fc from 'fast-check';
import { auditTable } from '../../../src/engine/index.js';
import { auditBook } from '../../../src/app/logs/auditBook.js';
import { logsIn } from '../../../src/app/logs/logsIn.js';
import type { Book } from '../../../src/sheet/book/book.js';
import { bookOf, refusal, type Written } from './bookOf.js';

const words = [
  'Date',
  'When',
  'Time',
  'Copper',
  'Cu ppm',
  'Dose mL',
  'System',
  'Note',
  'WC %',
  'Volume',
  'Form',
  'Band',
  'Gallon',
  'Days',
];
const values = [
  'chelated',
  'amine',
  'A1',
  'B2',
  'LOW',
  '<0.05',
  '2.1?',
  '200 L',
  '2026-03-01',
  '08:00',
  '25%',
  '',
  ' ',
  'none',
  'TRUE',
];
const cell: fc.Arbitrary<Written> = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom(...words) },
  { weight: 3, arbitrary: fc.constantFrom(...values) },
  { weight: 4, arbitrary: fc.constantFrom(46082, 46083.5, 46084, 46090, 2.2, 1.2, 0, -1, 1e300, 200, 0.25) },
  { weight: 3, arbitrary: fc.constant(null) },
  { weight: 1, arbitrary: fc.constantFrom(true, { type: 'Error' as const, basicValue: '#N/A' }) },
  {
    weight: 1,
    arbitrary: fc.constantFrom({ value: 'Date', formula: 'A1' }, { value: null, formula: '_xldudf_QT_BAND("amine")' }),
  },
);
const rows = fc.array(fc.array(cell, { maxLength: 5 }), { maxLength: 14 });
const log = fc.array(fc.tuple(fc.constantFrom(46082, 46083.4, 46085, 'x', null), cell, cell), { maxLength: 8 });
const likely = fc
  .tuple(rows, log, fc.constantFrom('System', 'Note', 'Dose mL'), fc.boolean())
  .map(([above, body, third, hasCard]): Written[][] => [
    ...(hasCard ? [['Volume', 200], ['Form', 'chelated'], []] : above),
    ['Date', 'Copper', third],
    ...body.map((row): Written[] => [...row]),
  ]);
const books = fc
  .tuple(likely, fc.oneof(rows, likely), fc.boolean())
  .map(([first, second, hidden]) =>
    bookOf({ First: first, 'The second': second }, hidden ? { hidden: ['The second'] } : {}),
  );

describe('auditBook of any book', () => {
  it('gives audits or a reason', () => {
    let audited = 0;
    const act = (book: Book, asked: Parameters<typeof auditBook>[1]): string =>
      refusal(() => {
        for (const each of auditBook(book, asked)) {
          expect(auditTable(each.findings).rows.length).toBeGreaterThan(0);
          audited++;
        }
      });
    const terms = fc.record(
      {
        sheet: fc.constantFrom('first', 'The second', 'third'),
        card: fc.constantFrom('A1:B2', "'The second'!A:B", 'First!A1:C5', 'B7', 'Nothing'),
        system: fc.constantFrom('A1', 'b2'),
        asOf: fc.constantFrom(46084, 1),
      },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(books, terms, (book, asked) => {
        expect(act(book, asked)).toMatch(/^$|^.{20,}[^.]$/s);
      }),
      { numRuns: 1500, seed: 53 },
    );
    expect(audited).toBeGreaterThan(50);
  });

  it('finds logs that lie in their sheets and not over each other', () => {
    fc.assert(
      fc.property(books, (book) => {
        const logs = logsIn(book);
        for (const [at, { sheet, range }] of logs.entries()) {
          const height = book.sheets.find(({ name }) => name === sheet)?.rows.length ?? 0;
          expect(range.lastRow).toBeLessThan(height);
          expect(range.firstRow).toBeLessThanOrEqual(range.lastRow);
          for (const other of logs.slice(at + 1).filter((each) => each.sheet === sheet)) {
            expect(isInside(range, other.range.firstRow, other.range.firstColumn)).toBe(false);
          }
        }
      }),
      { numRuns: 1000, seed: 53 },
    );
  });
});
