import { answerColumns } from '../../../../src/engine/index.js';
import { addressRange } from '../../../../src/sheet/address/addressOf.js';
import { answerTable } from '../../../../src/app/templates/plan/answerTable.js';
import { bodies } from '../../../../src/app/templates/plan/column.js';
import { form } from '../../../../src/app/templates/plan/form.js';
import { line } from '../../../../src/app/templates/plan/line.js';
import { planBook } from '../../../../src/app/templates/plan/planBook.js';
import { sheetPlan } from '../../../../src/app/templates/plan/sheetPlan.js';
import { table } from '../../../../src/app/templates/plan/table.js';
import type { Part, SheetPlan, TemplatePlan } from '../../../../src/app/templates/plan/templatePlan.js';
import { templatePlanOf } from '../../../../src/app/templates/plan/templatePlanOf.js';
import { withPlaces } from '../../../../src/app/templates/plan/withPlaces.js';

const sheetOf = (name: string, ...parts: readonly Part[]): SheetPlan =>
  sheetPlan({ name, tab: 'answer', page: { orientation: 'portrait' }, parts });
const planOf = (...sheets: readonly SheetPlan[]): TemplatePlan =>
  templatePlanOf({ title: '', subject: '', description: '', names: [], sheets });
const contents = (plan: TemplatePlan): unknown[] =>
  plan.sheets.flatMap(({ cells }) => cells.map(({ content }) => content));

describe('withPlaces', () => {
  const range = { firstRow: 4, firstColumn: 1, lastRow: 8, lastColumn: 27 };
  it.each([
    ['{log}', 'B5:AB9'],
    ['{$log}', '$B5:$AB9'],
    ['{log$}', 'B$5:AB$9'],
    ['SUM({$log$},1)', 'SUM($B$5:$AB$9,1)'],
    ['{$Log!log$}', 'Log!$B$5:$AB$9'],
    ['{Past log!log+}&"x"', `'Past log'!B5:AB9&"x"`],
    ['no place at all', 'no place at all'],
  ])('writes %s as %s', (text, written) => {
    expect(withPlaces(text, () => range)).toBe(written);
  });

  it('leaves what nobody knows', () => {
    expect(withPlaces('{log}', () => undefined)).toBe('{log}');
  });
});

describe('a table', () => {
  const columns = [
    { key: 'litres', heading: 'Change, L', kind: 'number', width: 12, look: 'inputNumber' },
    { heading: 'Twice', kind: 'number', format: '0.0', formula: '={litres}*2+{$factor$}' },
  ] as const;
  const doubled = table({ at: 'C4', key: 'changes', columns, rows: [[10], [20]], room: 3, body: bodies.answer });

  it('writes the formula of a column in each row, and of columns of other parts as their places', () => {
    const factor = form({ at: 'A1', lines: { factor: ['Factor', 7] } });
    expect(contents(planOf(sheetOf('S', factor, doubled)))).toEqual([
      ...['Factor', 7, 'Change, L', 'Twice', 10, '=C5*2+$B$1', 20, '=C6*2+$B$1'],
    ]);
  });

  it('has its places with and without headings, to the last row made ready', () => {
    const places = Object.entries(doubled.places ?? {}).map(([key, range]) => [key, addressRange(range)]);
    expect(Object.fromEntries(places)).toMatchObject({
      changes: 'C5:D7',
      'changes+': 'C4:D7',
      'changes.Twice': 'D5:D7',
      'changes.Twice+': 'D4:D7',
      'changes.litres heading': 'C4:C4',
      'changes.litres first': 'C5:C5',
    });
  });

  it('stands beside another as one with it', () => {
    const due = table({
      beside: doubled,
      key: 'due',
      columns: [{ heading: 'Due', kind: 'text', formula: '=IF({Twice}>30,"now","")' }],
      room: 3,
      tones: [{ on: 'Due', rules: [{ when: '{$Due}="now"', tone: 'due' }] }],
      ruled: 'first',
    });
    expect(due.cells?.map(({ content }) => content)).toEqual([
      'Due',
      ...[5, 6, 7].map((row) => `=IF(D${row}>30,"now","")`),
    ]);
    expect(due.conditions?.map(({ range, rules }) => [addressRange(range), rules[0]?.when])).toEqual([
      ['E5:E7', '$E5="now"'],
      ['C5:E7', '$C5<>""'],
    ]);
  });
});

describe('an answer table', () => {
  const tables = Object.entries(answerColumns).filter(([, columns]) => typeof columns !== 'string');

  it.each(tables.map(([id, columns]) => [id, columns] as const))(
    'of %s takes its columns from the function, with sides, formats and widths',
    (id, columns) => {
      const { cells, areas, widths, lastColumn } = answerTable({ at: 'B3', id, given: '', room: 5 });
      const kinds = typeof columns === 'string' ? [] : columns.map(({ kind }) => kind);
      expect(cells).toEqual([{ row: 2, column: 1, content: `=QT.${id}()`, isArray: true }]);
      expect(lastColumn).toBe(kinds.length);
      const bodiesOf = (areas ?? []).filter(({ range }) => range.firstRow === 3);
      expect(bodiesOf.map(({ look }) => look === 'cellNumber')).toEqual(kinds.map((kind) => kind === 'number'));
      expect(bodiesOf.map(({ format }) => format === 'yyyy-mm-dd hh:mm')).toEqual(kinds.map((kind) => kind === 'time'));
      expect((widths ?? []).every(({ width, isUsual }) => isUsual === true && width >= 10)).toBe(true);
    },
  );

  it('refuses a look for a column that the function does not have, and a function that gives no table', () => {
    expect(() => answerTable({ id: 'HOLDROWS', given: '', room: 1, columns: { Copepods: 10 } })).toThrow(
      'HOLDROWS has no column Copepods',
    );
    expect(() => answerTable({ id: 'HOLDDAYS', given: '', room: 1 })).toThrow('HOLDDAYS gives no table');
  });
});

describe('a sheet', () => {
  it('refuses two places of one name, and a formula that names none', () => {
    const twice = [line('A1', 'a', 'title', { key: 'here' }), line('A2', 'b', 'title', { key: 'here' })];
    expect(() => sheetOf('Twice', ...twice)).toThrow('Twice: two places are called here');
    const astray = sheetOf('S', line('A1', '={nowhere}', 'title'));
    expect(() => planOf(astray)).toThrow('S: there is no place {S!nowhere}');
    const other = sheetOf('S', line('A1', '={Other!here}', 'title'));
    expect(() => planOf(other)).toThrow('S: there is no place {Other!here}');
  });

  it('is as wide in a column as the widest of its parts asks; a usual width counts where no other is given', () => {
    const narrow = table({ at: 'A1', key: 'a', columns: [{ heading: 'When', kind: 'time', width: 9 }], room: 1 });
    const wide = table({ at: 'A5', key: 'b', columns: [{ heading: 'When', kind: 'time', width: 11 }], room: 1 });
    const usual = table({ at: 'A9', key: 'c', columns: [{ heading: 'When', kind: 'time' }], room: 1 });
    const beside = table({ at: 'C1', key: 'd', columns: [{ heading: 'When', kind: 'time' }], room: 1 });
    expect(sheetOf('S', narrow, wide, usual, beside).widths).toEqual([11, 3, 18]);
  });
});

describe('planBook', () => {
  it('has contents, stored formulas, formats and tables; calls of ours are free to fill', () => {
    const log = table({
      at: 'A1',
      key: 'log',
      name: 'Log',
      columns: [
        { heading: 'When', kind: 'time' },
        { heading: 'Copper', kind: 'number' },
      ],
      rows: [[46_082.5, '<0.05']],
      room: 4,
    });
    const hold = form({ at: 'D1', lines: { days: ['Days', '=QT.HOLDDAYS({log.When+},{log.Copper+},"amine")'] } });
    const book = planBook(planOf(sheetOf('Log', log, hold)));
    const [sheet] = book.sheets;
    expect(sheet?.rows[1]).toEqual([{ value: 46_082.5, format: 'yyyy-mm-dd hh:mm' }, { value: '<0.05' }]);
    expect(sheet?.rows[0]?.[4]).toEqual({
      value: null,
      formula: '_xldudf_QT_HOLDDAYS(A1:A5,B1:B5,"amine")',
      dynamic: true,
      fills: { firstRow: 0, firstColumn: 4, lastRow: 0, lastColumn: 4 },
    });
    expect(book.tables.map(({ name, columns, range }) => [name, columns, addressRange(range)])).toEqual([
      ['Log', ['When', 'Copper'], 'A1:B5'],
    ]);
  });
});
