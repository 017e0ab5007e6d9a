import { parseQuantity } from '../../../src/engine/units/parseQuantity.js';
import { parseTime } from '../../../src/engine/units/time/parseTime.js';
import { litresInGallons } from '../published/Gallons.js';
import { eachRow } from '../published/publishedTable.js';
import { serialCheck } from '../published/Serials.js';

describe('parseQuantity', () => {
  it('has the exact gallons', () => {
    eachRow(litresInGallons, ([us, imperial]) => {
      expect(parseQuantity('1 gal', 'litres', { field: 'volume' })).toEqual({ ok: true, value: us });
      expect(parseQuantity('1 imp gal', 'litres', { field: 'volume' })).toEqual({ ok: true, value: imperial });
    });
  });
});

describe('parseTime', () => {
  it.each(serialCheck.rows)('gives %s its serial, %s', (text, serial) => {
    expect(parseTime(text, { field: 'when' })).toEqual({ ok: true, value: Number(serial) });
  });
});
