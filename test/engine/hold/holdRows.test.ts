import { holdDays as holdDaysIn } from '../../../src/engine/hold/holdDays.js';
import { holdEnds as holdEndsIn } from '../../../src/engine/hold/holdEnds.js';
import { holdRows } from '../../../src/engine/hold/holdRows.js';
import { holdSpans as holdSpansIn } from '../../../src/engine/hold/holdSpans.js';
import { holdStart as holdStartIn } from '../../../src/engine/hold/holdStart.js';
import { traceHolds } from '../../../src/engine/hold/holdTracer.js';
import type { ReadingColumns } from '../../../src/engine/log/readingColumns.js';
import type { HoldTerms } from '../../../src/engine/hold/holdTerms.js';
import { holdRowsTable, holdsTable } from '../../../src/engine/text/holdTables.js';
import { serialFromDate } from '../../../src/base/serialFromDate.js';
import { columnsOf, logOf } from './columnsOf.js';

const holdDays = (log: ReadingColumns, given: HoldTerms) => holdDaysIn(traceHolds(log, given), given);
const holdStart = (log: ReadingColumns, given: HoldTerms) => holdStartIn(traceHolds(log, given), given);
const holdEnds = (log: ReadingColumns, given: HoldTerms, days: number) =>
  holdEndsIn(traceHolds(log, given), given, days);
const holdSpans = (log: ReadingColumns, given: HoldTerms, days: number) =>
  holdSpansIn(traceHolds(log, given), given, days);
const terms: HoldTerms = { low: 1.95, longestGap: 4, confirm: 1 };
const chelated = { low: 1.95, high: 2.55, inner: { low: 2, high: 2.5 } };
const march = (day: number, hour = 0): number => serialFromDate(2026, 3, 1) + day - 1 + hour / 24;
const statusAndNote = (log: ReturnType<typeof logOf>, more: Partial<HoldTerms> = {}) =>
  holdRowsTable(holdRows(log, { ...terms, ...more }, chelated)).rows.map(([, , status, day, done, row, note]) => [
    row,
    status,
    day,
    done,
    note,
  ]);

const dipped = logOf`
  2026-03-01 08:00 | 0.8
  2026-03-02 08:00 | 2.1
  2026-03-03 08:00 | 2.2
  2026-03-04 20:00 | 2.2
  2026-03-05 08:00 | 1.9
  2026-03-06 08:00 | 2.0
`;

describe('holdRows', () => {
  it('counts days from the first reading in the band and starts again after a dip', () => {
    expect(statusAndNote(dipped)).toEqual([
      [1, 'below', '', '', ''],
      [2, 'in band', 1, 0, 'hold starts'],
      [3, 'in band', 2, 1, ''],
      [4, 'in band', 3, 2.5, ''],
      // From 2 March 08:00 to 4 March 20:00, its last reading not below.
      [5, 'below', '', '', 'hold broken after 2.5 days'],
      [6, 'in band', 1, 0, 'hold starts'],
    ]);
  });

  it('notes approximate readings, unknown tops, the allowance and late tests', () => {
    const log = logOf`
      2026-03-01 08:00 | ~2.1
      2026-03-02 08:00 | >2.1
      2026-03-03 08:00 | 1.96
      2026-03-05 20:00 | 2.52
      2026-03-06 08:00 | 2.60
      2026-03-07 08:00 | <2.0
    `;
    expect(statusAndNote(log)).toEqual([
      [1, 'in band', 1, 0, 'approximate; hold starts'],
      [2, 'above', 2, 1, 'top unknown'],
      [3, 'in band', 3, 2, 'inside only by the allowance'],
      [4, 'in band', 5, 4.5, 'inside only by the allowance; tested after 60.0 h'],
      [5, 'above', 6, 5, ''],
      [6, 'below', '', '', 'hold broken after 5.0 days'],
    ]);
    expect(holdRows(log, terms, chelated)[5]?.level).toBe(2);
  });

  it('counts nothing before the arrival', () => {
    const arrived = march(3, 20);
    expect(statusAndNote(dipped, { arrived }).map((row) => row.slice(2))).toEqual([
      ['', '', ''],
      ['', '', ''],
      ['', '', ''],
      [2, 1, 'hold starts'],
      ['', '', 'hold broken after 1.0 days'],
      [1, 0, 'hold starts'],
    ]);
    // A hold that was over before the fish came in is none of its own.
    expect(statusAndNote(dipped, { arrived: march(5, 7) })[4]).toEqual([5, 'below', '', '', '']);
  });

  it('lets the lower of two readings at one instant decide', () => {
    const log = logOf`
      2026-03-01 08:00 | 2.1
      2026-03-02 08:00 | 2.1
      2026-03-02 08:00 | 1.9
      2026-03-03 08:00 | 2.1
    `;
    expect(statusAndNote(log)).toEqual([
      [1, 'in band', 1, 0, 'hold starts'],
      [2, 'in band', '', '', ''],
      [3, 'below', '', '', 'hold broken after 0.0 days'],
      [4, 'in band', 1, 0, 'hold starts'],
    ]);
  });

  it('waits for the second of two readings where the keeper wants it confirmed', () => {
    expect(statusAndNote(dipped, { confirm: 2 }).map((row) => row.slice(2))).toEqual([
      ['', '', ''],
      ['', '', ''],
      [1, 0, 'hold starts'],
      [2, 1.5, ''],
      ['', '', 'hold broken after 1.5 days'],
      ['', '', ''],
    ]);
  });
});

describe('holdSpans', () => {
  it('lists each hold with what ended it', () => {
    const log = logOf`
      2026-03-01 | 2.1
      2026-03-03 | 2.1
      2026-03-08 | 2.1
      2026-03-09 | 2.1
      2026-03-10 | 1.5
      2026-03-11 | 2.1
    `;
    expect(holdsTable(holdSpans(log, terms, 2)).rows).toEqual([
      [march(1), march(3), 2, 'yes', 'untested 120.0 h', 3],
      [march(8), march(9), 1, 'no', 'below', 5],
      [march(11), march(11), 0, 'running', 'still running', ''],
    ]);
    expect(holdsTable(holdSpans(log, { ...terms, longestGap: Infinity }, 2)).rows.map((row) => row[2])).toEqual([8, 0]);
    expect(holdSpans(log, { ...terms, arrived: march(4) }, 2).map((span) => span.from)).toEqual([march(8), march(11)]);
  });

  it('holds the longest gap to within a second', () => {
    const gap = (seconds: number) =>
      columnsOf([
        [march(1), 2.1],
        [march(5) + seconds / 86400, 2.1],
      ]);
    expect(holdSpans(gap(0.9), terms, 30)).toHaveLength(1);
    expect(holdSpans(gap(2), terms, 30)).toHaveLength(2);
  });
});

describe('holdDays', () => {
  it('credits the present at most 36 h past the last test', () => {
    const log = logOf`
      2026-03-01 | 2.1
      2026-03-02 | 2.1
    `;
    const at = (asOf: number, longestGap = 4) => holdDays(log, { ...terms, longestGap, asOf });
    expect(at(march(3))).toEqual({ ok: true, value: 2 });
    expect(at(march(9))).toEqual({ ok: true, value: 2.5 });
    // A hold that a gap of 24 h would restart is not credited for longer.
    expect(at(march(9), 1)).toEqual({ ok: true, value: 2 });
    expect(at(march(1, 12))).toEqual({ ok: true, value: 0.5 });
    expect(at(march(0))).toMatchObject({ ok: false, problem: { code: 'no-reading' } });
  });

  it('is 0 after a reading below, and never negative', () => {
    expect(holdDays(logOf`2026-03-01 | 1.0`, terms)).toEqual({ ok: true, value: 0 });
    expect(holdDays(logOf`2026-03-01 | 2.0`, { ...terms, arrived: march(9) })).toEqual({ ok: true, value: 0 });
  });

  it('takes a reading on the limit as inside', () => {
    expect(holdStart(logOf`2026-03-01 | 1.95`, terms)).toEqual({ ok: true, value: march(1) });
    expect(holdStart(logOf`2026-03-01 | 1.949`, terms)).toMatchObject({
      ok: false,
      problem: { code: 'no-hold', level: '1.949', when: '2026-03-01 00:00', row: 1, low: 1.95 },
    });
  });
});

describe('holdEnds', () => {
  it('is the end of the first hold that was long enough, or of the running one', () => {
    const log = logOf`
      2026-03-01 | 2.1
      2026-03-04 | 2.1
      2026-03-05 | 1.0
      2026-03-06 | 2.1
    `;
    expect(holdEnds(log, terms, 2)).toEqual({ ok: true, value: march(3) });
    expect(holdEnds(log, terms, 30)).toEqual({ ok: true, value: march(36) });
    expect(holdEnds(log, { ...terms, arrived: march(7) }, 30)).toEqual({ ok: true, value: march(37) });
    expect(holdEnds(logOf`2026-03-05 | 1.0`, terms, 30)).toMatchObject({ problem: { code: 'no-hold' } });
  });
});

describe('what the tables and refusals say', () => {
  it('rounds hours half up, whatever the date', () => {
    const gap = (hours: number) =>
      columnsOf([
        [march(1), 2.1],
        [march(1) + hours / 24, 2.1],
      ]);
    const note = (hours: number) => String(holdRowsTable(holdRows(gap(hours), terms, chelated)).rows[1]?.[6]);
    expect(note(39.45)).toBe('tested after 39.5 h');
    expect(note(60)).toBe('tested after 60.0 h');
  });

  it('repeats a bound as it was written', () => {
    const log = columnsOf([
      [march(1), 2.1],
      [march(2), '<1.5'],
    ]);
    expect(holdStart(log, terms)).toMatchObject({ ok: false, problem: { code: 'no-hold', level: '<1.5', row: 2 } });
  });
});
