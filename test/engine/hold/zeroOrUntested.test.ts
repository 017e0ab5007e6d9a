import { holdDays } from '../../../src/engine/hold/holdDays.js';
import { traceHolds } from '../../../src/engine/hold/holdTracer.js';
import { zeroOrUntested } from '../../../src/engine/hold/zeroOrUntested.js';
import type { Cell } from '../../../src/engine/units/cell.js';
import { columnsOf } from './columnsOf.js';

const terms = { low: 1.95, longestGap: 4, confirm: 1 } as const;
const answer = (...readings: Cell[]) =>
  zeroOrUntested(columnsOf(readings.map((reading, index) => [46082 + index, reading])), terms.low, (columns) =>
    holdDays(traceHolds(columns, terms), terms),
  );

describe('zeroOrUntested', () => {
  it('refuses a bare 0 that may be an empty cell inside a hold', () => {
    expect(answer(2.1, 2.1, 0, 2.1)).toEqual({ ok: false, problem: { code: 'zero-or-untested', row: 3 } });
    expect(answer(2.1, 2.1, 0)).toEqual({ ok: false, problem: { code: 'zero-or-untested', row: 3 } });
  });

  it('takes a 0 as read where the host sends empty cells as such', () => {
    expect(answer(2.1, null, 0, 2.1)).toEqual({ ok: true, value: 0 });
  });

  it('takes a 0 as read before the level has reached the band', () => {
    expect(answer(0, 0, 1, 2.1, 2.1)).toEqual({ ok: true, value: 1 });
  });

  it('takes a 0 as read where the answer does not hang on it', () => {
    // A reading of 1 on the fourth day broke the hold anyway.
    expect(answer(2.1, 0, 2.1, 1, 2.1, 2.1)).toEqual({ ok: true, value: 1 });
  });

  it('refuses two neighbours of which either alone would change nothing', () => {
    expect(answer(2.1, 0, 0, 2.1)).toEqual({ ok: false, problem: { code: 'zero-or-untested', row: 2 } });
  });

  it('names the row that decides', () => {
    expect(answer(2.1, 0, 1, 2.1, 0, 2.1)).toEqual({ ok: false, problem: { code: 'zero-or-untested', row: 5 } });
  });

  it('takes a 0 written with its unit as read', () => {
    expect(answer(2.1, '0 mg/L', 2.1)).toEqual({ ok: true, value: 0 });
  });
});
