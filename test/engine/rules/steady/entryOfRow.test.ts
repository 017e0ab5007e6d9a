import type { Log } from '../../../../src/engine/log/table/log.js';
import { entryOfRow } from '../../../../src/engine/rules/steady/entryOfRow.js';

const when = Float64Array.of(1, 2, 2, 2, 3);
const row = Uint32Array.of(9, 4, 7, 5, 2);
const log = { count: 5, when, row } as unknown as Log;

describe('entryOfRow', () => {
  it('finds each row by its time, rows of one time in any order', () => {
    row.forEach((each, entry) => expect(entryOfRow(log, each, when[entry]!)).toBe(entry));
  });
});
