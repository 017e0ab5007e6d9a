import { changedCells } from '../../../src/app/page/changedCells.js';
import type { GridCell } from '../../../src/app/page/gridSheets.js';
import type { CellFormula } from '../../../src/app/page/shownFile.js';
import type { BookCell, BookSheet } from '../../../src/sheet/book/book.js';

type Row<T> = readonly (T | undefined)[];

function changes(
  was: readonly Row<BookCell>[],
  is: readonly Row<GridCell>[],
  given: Record<string, Partial<CellFormula>> = {},
) {
  const sheet: BookSheet = { name: 'Log', hidden: false, rows: was, merged: [], widths: [] };
  const now = { id: 'sheet-1', name: 'Log', hidden: false, rows: is, widths: [], merged: [] };
  const formulas = new Map(
    Object.entries(given).map(([at, formula]) => [
      `sheet-1!${at}`,
      { typed: formula.plain ?? '', plain: null, isStored: true, ...formula },
    ]),
  );
  return changedCells({ sheet, now, formulas });
}

const cell = (row: number, column: number, rest: object) => ({ sheet: 'Log', row, column, ...rest });
const time = 'yyyy-mm-dd hh:mm';
const spill = { firstRow: 0, firstColumn: 0, lastRow: 1, lastColumn: 0 };

describe('changedCells', () => {
  it('finds nothing where nothing was changed', () => {
    const stored: Row<BookCell> = [{ value: 'When' }, { value: 2.05 }, undefined, { value: '' }, { value: true }];
    const shown: Row<GridCell> = [{ value: 'When' }, { value: 2.05 }, undefined, undefined, { value: true }];
    expect(changes([stored], [shown])).toEqual([]);
  });

  it('takes numbers that differ in their last digits for the same', () => {
    expect(changes([[{ value: 0.1 + 0.2 }]], [[{ value: 0.3 }]])).toEqual([]);
    expect(changes([[{ value: 0.3 }]], [[{ value: 0.301 }]])).toEqual([cell(0, 0, { value: 0.301 })]);
  });

  it('writes what was typed, over, away and below', () => {
    const stored: Row<BookCell>[] = [[{ value: 2.05 }, { value: 'note' }]];
    const shown: Row<GridCell>[] = [[{ value: 2.5 }], [undefined, { value: 46000.5, format: time }]];
    expect(changes(stored, shown)).toEqual([
      cell(0, 0, { value: 2.5 }),
      cell(0, 1, { value: null }),
      cell(1, 1, { value: 46000.5, isDate: true }),
    ]);
  });

  it('writes the fresh value of a formula and leaves its text alone', () => {
    const stored: BookCell = { value: 3, formula: '_xldudf_QT_HOLDDAYS(Log[When],Log[Cu])', dynamic: true };
    const shown: GridCell = { value: 4, formula: '=QT.HOLDDAYS($A$2:$A$9,$B$2:$B$9)' };
    const given = { '0,0': { plain: shown.formula ?? '' } };
    expect(changes([[stored]], [[shown]], given)).toEqual([cell(0, 0, { value: 4 })]);
    expect(changes([[stored]], [[{ ...shown, value: 3 }]], given)).toEqual([]);
  });

  it('says how far a table spills now where it has grown', () => {
    const stored: BookCell = { value: 'From', formula: '_xldudf_QT_HOLDS(A2:A9,B2:B9)', dynamic: true, fills: spill };
    const shown: GridCell = { value: 'From', formula: '=QT.HOLDS(A2:A9,B2:B9)', spills: { ...spill, lastRow: 2 } };
    const filled: Row<GridCell>[] = [[shown], [{ value: 1, isSpilled: true }], [{ value: 2, isSpilled: true }]];
    expect(changes([[stored], [{ value: 1 }]], filled, { '0,0': { plain: shown.formula ?? '' } })).toEqual([
      cell(0, 0, { value: 'From', fills: { ...spill, lastRow: 2 } }),
      cell(2, 0, { value: 2 }),
    ]);
  });

  it('writes a formula that was typed in its stored form, ours as an array that may grow', () => {
    const ours: GridCell = { value: 4, formula: '=QT.HOLDDAYS(A2:A9,B2:B9,"chelated")' };
    const plain: GridCell = { value: 6, formula: '=SUM(A2:A9)' };
    expect(changes([], [[ours, plain]])).toEqual([
      cell(0, 0, { value: 4, formula: '_xldudf_QT_HOLDDAYS(A2:A9,B2:B9,"chelated")', dynamic: true }),
      cell(0, 1, { value: 6, formula: 'SUM(A2:A9)' }),
    ]);
  });

  it('keeps a formula that the grid cannot compute, until something is typed over it', () => {
    const stored: BookCell = { value: 7, formula: 'OTHER(A1)' };
    const kept = { '0,0': { typed: '=OTHER(A1)' } };
    expect(changes([[stored]], [[{ value: 7 }]], kept)).toEqual([]);
    expect(changes([[stored]], [[{ value: 8 }]], kept)).toEqual([cell(0, 0, { value: 8, formula: null })]);
  });

  it('takes a formula away that was cleared, also where its value stays', () => {
    const stored: BookCell = { value: 7, formula: 'SUM(A1:A3)' };
    const known = { '0,0': { plain: '=SUM(A1:A3)' } };
    expect(changes([[stored]], [[{ value: 7 }]], known)).toEqual([cell(0, 0, { value: 7, formula: null })]);
  });

  it('writes a typed formula that names a table as it was typed', () => {
    const shown: GridCell = { value: 6, formula: '=SUM($A$2:$A$9)' };
    const known = { '0,0': { typed: '=SUM(Log[Dose mL])', plain: '=SUM($A$2:$A$9)', isStored: false } };
    expect(changes([], [[shown]], known)).toEqual([cell(0, 0, { value: 6, formula: 'SUM(Log[Dose mL])' })]);
  });

  it('writes #VALUE! for an error that only the grid makes', () => {
    const shown: GridCell = { value: { type: 'Error', basicValue: '#SPILL!' }, formula: '=QT.HOLDS(A2:A9,B2:B9)' };
    const [change] = changes([[{ value: 1, formula: 'x' }]], [[shown]], { '0,0': { plain: shown.formula ?? '' } });
    expect(change?.value).toEqual({ type: 'Error', basicValue: '#VALUE!' });
  });
});
