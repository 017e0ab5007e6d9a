import { resolve } from 'node:path';
import type { ArrayValueObject, BaseValueObject } from '@univerjs/engine-formula';
import { formulaExecutors } from '../../../src/app/calls/formulaExecutors';
import { Refusals } from '../../../src/app/calls/refusals';
import { nodeBundle } from '../../../src/app/cli/files/nodeBundle';
import type { CellValue } from '../../../src/sheet/cell/cellValue';
import { arrayObject, valueObject } from '../../../src/sheet/library/valueObject';

const place = { unitId: '', sheetId: '', row: -1, column: -1 };
const executors = new Map(
  formulaExecutors(nodeBundle(resolve('dist')).functions, new Refusals()).map(([of, name]) => [name, of]),
);

function called(name: string, ...given: readonly (CellValue | CellValue[][])[]): BaseValueObject {
  const Executor = executors.get(name);
  if (Executor === undefined) throw new Error(name);
  const objects = given.map((one) => (Array.isArray(one) ? arrayObject(one, place) : valueObject(one)));
  return new Executor(name).calculate(...objects) as BaseValueObject;
}

/** Value and number format of the cells below a heading. */
function column(answer: BaseValueObject, heading: string): [value: unknown, format: string][] {
  const array = answer as ArrayValueObject;
  const at = Array.from({ length: array.getColumnCount() }, (_, c) => array.get(0, c)?.getValue()).indexOf(heading);
  return Array.from({ length: array.getRowCount() - 1 }, (_, row) => {
    const cell = array.get(row + 1, at);
    return [cell?.getValue(), cell?.getPattern() ?? ''];
  });
}

const log: CellValue[][] = [
  ['When', 'Cu ppm', 'Fish in', 'Dead'],
  [46_082, 2.2, '1600 green chromis', ''],
  [46_084, 2.2, '', '1 chromis'],
];
const card: CellValue[][] = [
  ['Volume', '200 L'],
  ['Form', 'chelated'],
  ['Strength', 10],
];

describe('the functions as the grid takes them', () => {
  it('never show a count of fish as a date', () => {
    expect(column(called('QT.DEATHS', log, card), 'Came in')[0]).toEqual([1600, '']);
  });

  it('show the moments in a table as dates, and nothing else in it', () => {
    const rows = called('QT.HOLDROWS', [[46_082], [46_083]], [[2.1], [2.2]], 'chelated');
    expect(column(rows, 'When').map(([, format]) => format)).toEqual(['yyyy-mm-dd hh:mm', 'yyyy-mm-dd hh:mm']);
    expect(column(rows, 'Copper').map(([, format]) => format)).toEqual(['', '']);
  });

  it('show a moment that is the whole answer as a date', () => {
    expect(called('QT.HOLDSTART', [[46_082], [46_083]], [[2.1], [2.2]], 'chelated').getPattern()).toBe(
      'yyyy-mm-dd hh:mm',
    );
    expect(called('QT.HOLDDAYS', [[46_082], [46_083]], [[2.1], [2.2]], 'chelated').getPattern()).toBe('');
  });
});
