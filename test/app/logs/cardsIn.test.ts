import { addressRange } from '../../../src/sheet/address/addressOf.js';
import { cardsIn } from '../../../src/app/logs/cardsIn.js';
import type { Book } from '../../../src/sheet/book/book.js';
import { beside, bookOf, filling, type Written } from './bookOf.js';
import { cardRows, cardTable, logRows, sharedRows, systemCard } from './sampleRows.js';

const cards = (book: Book): string[] =>
  cardsIn(book).map(
    ({ sheet, range, system }) => `${sheet}!${addressRange(range)}${system === null ? '' : ` ${system}`}`,
  );

describe('cardsIn', () => {
  it('finds names beside values, wherever they stand', () => {
    expect(cards(bookOf({ Card: cardRows }))).toEqual(['Card!A1:B4']);
    const titled = [
      ['My card'],
      [],
      ['Name', 'Value'],
      ...systemCard('Q2'),
      ['Stand', 'left'],
      [],
      ['Keep it up', null],
    ];
    expect(cards(bookOf({ S: titled }))).toEqual(['S!A4:B8 Q2']);
    expect(cards(bookOf({ S: beside(logRows(5), cardRows) }))).toEqual(['S!E1:F4']);
    expect(cards(bookOf({ S: [...cardRows, ['Date', 'Copper'], [46082, 2.2]] }))).toEqual(['S!A1:B4']);
  });

  it('needs a volume with a number and a form or band', () => {
    expect(
      cards(
        bookOf({
          S: [
            ['Volume', 200],
            ['Days', 30],
          ],
        }),
      ),
    ).toEqual([]);
    expect(
      cards(
        bookOf({
          S: [
            ['Volume', 'unknown'],
            ['Form', 'chelated'],
          ],
        }),
      ),
    ).toEqual([]);
    expect(
      cards(
        bookOf({
          S: [
            ['Band', '1.95-2.55'],
            ['Net vol', '55 gal'],
          ],
        }),
      ),
    ).toEqual(['S!A1:B2']);
  });

  it('goes on over a blank row to a setting, not to an answer or the next card', () => {
    const answer: Written = { value: 12, formula: '_xldudf_QT_HOLDDAYS(A1:A9,B1:B9,"chelated")' };
    expect(cards(bookOf({ S: [['Volume', 200], ['Form', 'amine'], [], ['Strength', 5]] }))).toEqual(['S!A1:B4']);
    expect(cards(bookOf({ S: [['Volume', 200], ['Form', 'amine'], [], ['Hold days', answer]] }))).toEqual(['S!A1:B2']);
    expect(cards(bookOf({ S: [...systemCard('A'), [], ...systemCard('B')] }))).toEqual(['S!A1:B5 A', 'S!A7:B11 B']);
    expect(cards(bookOf({ S: [...systemCard('A'), ...systemCard('B')] }))).toEqual(['S!A1:B5 A', 'S!A6:B10 B']);
  });

  it('finds a table of cards, a row each', () => {
    const rows = [['Cards'], ...cardTable, [], ['What happened', 'Volume 3']];
    expect(cards(bookOf({ Shop: rows }))).toEqual(['Shop!A3:D3 A1', 'Shop!A4:D4 A2', 'Shop!A5:D5 B1']);
    expect(cards(bookOf({ Shop: beside(sharedRows(['A1'], 3), cardTable) }))).toHaveLength(3);
  });

  it('takes no log with a volume and a system for a table of cards, and no answer for a card', () => {
    const log = [
      ['System', 'Date', 'Copper', 'Volume L'],
      ['A1', 46082, 2.2, 200],
    ];
    expect(cards(bookOf({ S: log }))).toEqual([]);
    const answer = [
      [filling('Name', '_xldudf_QT_CARD(D1:E4)', 'A1:D3'), 'Value'],
      ['Volume', 200],
      ['Form', 'chelated'],
    ];
    expect(cards(bookOf({ S: answer }))).toEqual([]);
    const linked: Written[][] = [
      [{ value: 'Volume', formula: 'Shop!A1' }, 200],
      [{ value: 'Form', formula: 'Shop!B1' }, 'amine'],
    ];
    expect(cards(bookOf({ S: linked }))).toEqual([]);
  });
});
