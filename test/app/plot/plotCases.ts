import { plotData, type PlotData } from '../../../src/app/plot/plotData.js';
import type { Content } from '../../../src/app/templates/plan/templatePlan.js';
import { pastTreatment, shopTreatment, treatmentOfRows } from './demoTreatments.js';

type Rows = readonly (readonly Content[])[];

const headings = ['When', 'Copper', 'Dose mL', 'Change L', 'Fish in', 'Dead'];
const chelated: Rows = [
  ['Volume', '200 L'],
  ['Form', 'chelated'],
  ['Strength', '10 mg/mL'],
];
const first = 46100;

function of(rows: Rows, card = chelated, asOf?: number): PlotData {
  return plotData(treatmentOfRows([headings, ...rows], card, asOf).treatment);
}

function series(count: number, row: (at: number) => readonly Content[]): Rows {
  return Array.from({ length: count }, (_, at) => row(at));
}

/** A log of 20,000 rows: a test every quarter of an hour, one in 997 below the band. */
export function bigLog(): PlotData {
  return of(
    series(20_000, (at) => {
      const level = at % 997 === 500 ? 1.9 - (at % 7) / 100 : 2.2 + 0.1 * Math.sin(at / 900) + 0.02 * Math.sin(at * 7);
      return [first + at / 96, Number(level.toFixed(3)), at % 300 === 0 ? 1 : null, at % 700 === 0 ? 5 : null];
    }),
  );
}

/** Plots as they come: short, long, empty, broken often, off the scale, in another band. */
export function plotCases(): Record<string, PlotData> {
  return {
    past: plotData(pastTreatment().treatment),
    ...Object.fromEntries(
      ['A1', 'A2', 'A3', 'A4', 'B2'].map((name) => [name, plotData(shopTreatment(name).treatment)]),
    ),
    'no reading': of([[first + 0.5, null, 3, null, 'chromis']]),
    'one reading': of([[first + 0.5, 2.2]]),
    'two readings': of([
      [first + 0.5, '<0.05', 20, null, '12 chromis'],
      [first + 1.5, '~2.1', null, 20, null, 1],
    ]),
    'two days': of(series(9, (at) => [first + 0.9 + at / 4, Math.min(2.3, 0.1 + at * 0.35), at < 6 ? 7 : null])),
    'two years': of(
      series(730, (at) => [first + at, at === 300 ? 1.7 : 2.2 + Math.sin(at / 9) / 10, null, at % 14 ? null : 10]),
    ),
    'broken often': of(series(120, (at) => [first + at / 2, at % 5 === 3 ? 1.8 : 2.2, at % 5 === 4 ? 4 : null])),
    'off the scale': of([2.2, 2.25, 19, 2.2, 12, 2.2, 2.21].map((level, at) => [first + at, level])),
    'other unit': of([2.2, 2.25, '2250', 2.2].map((level, at) => [first + at, level])),
    'other form': of(series(20, (at) => [first + at, 7 + Math.sin(at)])),
    'no top': of(
      series(20, (at) => [first + at, 1.5 + Math.sin(at) / 9]),
      [
        ['Volume', '200 L'],
        ['Band', 1.5],
      ],
    ),
    sulfate: of(
      series(25, (at) => [first + at, at < 3 ? 0.07 * at : 0.195 + 0.012 * Math.sin(at)]),
      [
        ['Volume', '200 L'],
        ['Form', 'sulfate'],
      ],
      first + 28.5,
    ),
  };
}
