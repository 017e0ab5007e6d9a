import { ammoniaChangeColumns, ammoniaChangeTable } from '../../../src/engine/text/waterTables.js';
import { litres, millilitres } from '../../../src/engine/units/quantity.js';

describe('ammoniaChangeTable', () => {
  it('is one row of two numbers', () => {
    expect(ammoniaChangeTable({ change: litres(150), copper: millilitres(33.75) })).toEqual({
      columns: ammoniaChangeColumns,
      rows: [[150, 33.75]],
    });
  });
});
