import { ramp } from '../../../src/engine/dose/ramp.js';
import { splitDose } from '../../../src/engine/dose/splitDose.js';
import type { Pace } from '../../../src/engine/dose/pacePlan.js';
import {
  doseSplitColumns,
  doseSplitTable,
  rampTable,
  thinColumns,
  thinTable,
} from '../../../src/engine/text/doseTables.js';
import { copperMgPerLitre, copperMgPerMl, litres, millilitres, serialDay } from '../../../src/engine/units/quantity.js';

const parts = splitDose({ total: millilitres(10), dosesADay: 2, days: 2, smallest: millilitres(0.1) });

const raised = (pace: Pace, dosesADay?: number) => {
  const steps = ramp({
    volume: litres(200),
    level: copperMgPerLitre(0),
    wanted: copperMgPerLitre(2.25),
    strength: copperMgPerMl(10),
    start: serialDay(46082.375),
    pace,
    dosesADay,
    smallest: millilitres(0.1),
  });
  if (!steps.ok) throw new Error(steps.problem.code);
  return rampTable(steps.value);
};

describe('thinTable', () => {
  it('is one row of stock and water', () => {
    const table = thinTable({ stock: millilitres(50), water: millilitres(450) });
    expect(table).toEqual({ columns: thinColumns, rows: [[50, 450]] });
  });
});

describe('doseSplitTable', () => {
  if (!parts.ok) throw new Error(parts.problem.code);
  const { value } = parts;

  it('counts hours from the first dose where it has no time', () => {
    expect(doseSplitTable(value, undefined)).toEqual({
      columns: [{ heading: 'Hours', kind: 'number' }, ...doseSplitColumns.slice(1)],
      rows: [
        [0, 2.5, 2.5],
        [12, 2.5, 5],
        [24, 2.5, 7.5],
        [36, 2.5, 10],
      ],
    });
  });

  it('gives times where the first dose has one', () => {
    const table = doseSplitTable(value, serialDay(46082.375));
    expect(table.columns).toBe(doseSplitColumns);
    expect(table.rows.map(([when]) => when)).toEqual([46082.375, 46082.875, 46083.375, 46083.875]);
  });
});

describe('rampTable', () => {
  it('has a row for each dose and says what to do', () => {
    const table = raised('gradual');
    expect(table.rows).toHaveLength(20);
    expect(table.rows[0]).toEqual([46082.375, 2.3, expect.closeTo(0.115, 12), 'test first, then dose']);
    expect(table.rows[1]?.[3]).toBe('dose');
    expect(table.rows[16]?.[3]).toBe(
      'dose; test 2 h after: if the reading differs from Level after by more than 15 %, stop: volume or strength is wrong',
    );
    expect(table.rows[15]?.[3]).toMatch(/^test first, then dose; test 2 h after/);
  });

  it('warns of doses that raise too much at once', () => {
    expect(raised(1, 2).rows[0]?.[3]).toMatch(/more than a quarter of wanted in one dose/);
    expect(raised('urgent', 1).rows[0]?.[3]).toMatch(/more than half of wanted in one dose/);
    expect(raised('urgent').rows.some((row) => /in one dose/.test(String(row[3])))).toBe(false);
  });

  it('has no text that reads as a number', () => {
    for (const row of raised(1, 1).rows) expect(Number(row[3])).toBeNaN();
  });
});
