import { auditFindings, holdSpans } from '../../../src/engine/index.js';
import { plotData } from '../../../src/app/plot/plotData.js';
import { serialOf } from '../../../src/app/templates/sheets/rowsOf.js';
import { pastTreatment, shopTreatment, treatmentOfRows } from './demoTreatments.js';

const card = [
  ['Volume', '200 L'],
  ['Form', 'chelated'],
  ['Strength', '10 mg/mL'],
  ['Longest gap', '3 days'],
];
const headings = ['When', 'Copper', 'Dose mL', 'Change %', 'Dead', 'Fish in', 'Fish out'];
const day = serialOf('2026-03-01 08:00');
const of = (rows: readonly (readonly (string | number | null)[])[], asOf?: number) =>
  plotData(treatmentOfRows([headings, ...rows], card, asOf).treatment);

describe('plotData', () => {
  it('has every reading with its place in the band, its row and the sort of number it is', () => {
    const { readings } = of([
      [day, '<0.05'],
      [day + 1, 1.9],
      [day + 2, '~2.2'],
      [day + 3, '2.1-2.3'],
      [day + 4, 2.6],
      [day + 5, '>3'],
    ]);
    expect(
      readings.map(({ row, status, bound, approximate, text }) => [row, status, bound, approximate, text]),
    ).toEqual([
      [2, 'below', 'under', false, '<0.05'],
      [3, 'below', null, false, '1.9'],
      [4, 'in band', null, true, '~2.2'],
      [5, 'in band', 'range', false, '2.1–2.3'],
      [6, 'above', null, false, '2.6'],
      [7, 'above', 'over', false, '>3'],
    ]);
    expect(readings.map(({ level, high }) => [level, high])).toEqual([
      [0.05, 0.05],
      [1.9, 1.9],
      [2.2, 2.2],
      [2.1, 2.3],
      [2.6, 2.6],
      [3, null],
    ]);
  });

  it('counts rows of the sheet where rows stand above the log', () => {
    const dataFrom = (firstRow: number) => plotData(pastTreatment(undefined, firstRow).treatment);
    const [here, moved] = [dataFrom(1), dataFrom(8)];
    for (const part of ['readings', 'breaks', 'untested', 'doses', 'changes', 'fish'] as const) {
      expect(here[part].length).toBeGreaterThan(0);
      expect(moved[part].map(({ row }) => row)).toEqual(here[part].map(({ row }) => row + 7));
    }
  });

  it('shows the holds of HOLDS and the breaks and stretches that the verdict counts', () => {
    for (const { treatment } of [pastTreatment(), shopTreatment('A2'), shopTreatment('B2')]) {
      const data = plotData(treatment);
      const spans = holdSpans(treatment.trace, treatment.terms, treatment.card.days);
      expect(data.holds.map(({ from, to, days }) => [from, to, days])).toEqual(
        spans.map(({ from, to, days }) => [from, to, days]),
      );
      const counted = auditFindings(treatment).flatMap((each) => (each.code === 'verdict-breaks' ? [each] : []))[0];
      const below = data.breaks.filter(({ why }) => why === 'below');
      expect(below.map(({ row }) => row)).toEqual(counted?.rows);
      expect(below.reduce((sum, { lost }) => sum + lost, 0)).toBeCloseTo(counted?.lost ?? NaN, 9);
    }
  });

  it('names a restart for want of tests as a break, and the stretch before it', () => {
    const data = of([
      [day, 2.2],
      [day + 1, 2.2],
      [day + 5, 2.2],
      [day + 6, 2.2],
    ]);
    expect(data.breaks).toEqual([{ when: day + 5, row: 4, why: 'untested', lost: 1 }]);
    expect(data.untested).toEqual([{ from: day + 1, to: day + 5, hours: 96, row: 4 }]);
    expect(data.holds.map(({ standing }) => standing)).toEqual(['too short', 'running']);
  });

  it('goes to the moment asked for, and says since when nobody has tested', () => {
    const data = of(
      [
        [day, 2.2],
        [day + 1, 2.2],
        [day + 9, 2.3],
      ],
      day + 3,
    );
    expect([data.to, data.asOf, data.readings.length]).toEqual([day + 3, day + 3, 2]);
    expect(data.untested).toEqual([{ from: day + 1, to: day + 3, hours: 48, row: 3 }]);
    expect(data.course.at(-1)?.when).toBe(day + 3);
  });

  it('follows the level from event to event: up by what a dose adds, down by what a change takes', () => {
    const data = of([
      [day, 2, null, null],
      [day + 0.5, null, 5, null],
      [day + 1, 2.25, null, null],
      [day + 1.5, null, null, 0.1],
      [day + 2, 2.03, null, null],
    ]);
    expect(data.doses).toEqual([{ when: day + 0.5, row: 3, millilitres: 5, rise: 0.25 }]);
    expect(data.changes).toEqual([{ when: day + 1.5, row: 5, litres: 20, percent: 10, replacement: 0 }]);
    const at = (when: number) => data.course.filter((point) => point.when === when).map(({ expected }) => expected);
    const [beforeDose = NaN, afterDose = NaN] = at(day + 0.5);
    const [beforeChange = NaN, afterChange = NaN] = at(day + 1.5);
    expect(afterDose - beforeDose).toBeCloseTo(0.25, 9);
    expect(afterChange / beforeChange).toBeCloseTo(0.9, 9);
    expect(data.course.every(({ low, expected, high }) => low <= expected && expected <= high)).toBe(true);
    expect(data.course.every(({ when }, i, all) => i === 0 || when >= (all[i - 1]?.when ?? NaN))).toBe(true);
    const between = data.course.filter(({ when }) => when > day && when < day + 0.5);
    expect(between.length).toBeGreaterThanOrEqual(10);
  });

  it('takes the net volume of the time for what a dose and a change are', () => {
    const log = [
      ['When', 'Copper', 'Dose mL', 'Change L', 'Volume L'],
      [day, 2.2, null, null, null],
      [day + 1, 2.2, 4, 10, 100],
    ];
    const { doses, changes } = plotData(treatmentOfRows(log, card).treatment);
    expect(doses[0]?.rise).toBeCloseTo(0.4, 12);
    expect(changes[0]?.percent).toBeCloseTo(10, 12);
  });

  it('has no level by mass balance where doses have no strength, and does without', () => {
    const weak = card.filter(([name]) => name !== 'Strength');
    const rows = [headings, [day, 2.2, null], [day + 1, 2.2, 5]];
    const data = plotData(treatmentOfRows(rows, weak).treatment);
    expect(data.course).toEqual([]);
    expect(data.doses).toEqual([{ when: day + 1, row: 3, millilitres: 5, rise: null }]);
  });

  it('marks fish that come, go and die, each once, and cells that could not be read', () => {
    const data = of([
      [day, 0, null, null, null, '12 chromis'],
      [day + 1, 'LOW', null, null, 2, null],
      [day + 2, 2.2, null, null, null, null, '1 dead'],
      [day + 3, 2.2, null, null, 0, null, '3 chromis sold'],
      [day + 4, 2.2, null, null, null, 'some tangs', '-'],
    ]);
    expect(data.fish.map(({ row, kind, count }) => [row, kind, count])).toEqual([
      [2, 'in', 12],
      [3, 'died', 2],
      [4, 'died', 1],
      [5, 'out', 3],
      [6, 'in', null],
    ]);
    expect(data.unread).toEqual([{ when: day + 1, row: 3 }]);
  });

  it('takes a log without readings', () => {
    const data = of([[day, null, 5, null, null, '12 chromis']]);
    expect([data.readings, data.course, data.holds, data.breaks]).toEqual([[], [], [], []]);
    expect([data.from, data.to]).toEqual([day, day]);
  });
});
