import { answerTable, bodies, type Content, line, type Part, table, type TableColumn } from '../plan/index.js';
import { demoSheet } from './demoSheet.js';
import { serialOf } from '../sheets/rowsOf.js';

/** The bench test of filter ceramic: the bucket with it, and one without to compare. */
const buckets: readonly Content[][] = [
  [serialOf('2026-02-14 10:00'), 2.4, 2.4],
  [serialOf('2026-02-15 10:00'), 2.33, 2.4],
  [serialOf('2026-02-16 10:00'), 2.27, 2.38],
  [serialOf('2026-02-17 10:00'), 2.19, 2.41],
  [serialOf('2026-02-18 10:00'), 2.14, 2.39],
  [serialOf('2026-02-19 10:00'), 2.07, 2.4],
  [serialOf('2026-02-20 10:00'), 2.01, 2.38],
  [serialOf('2026-02-21 10:00'), 1.96, 2.39],
];

/** Tank Q3 with its doses, each as the rise it gave. */
const dosed: readonly Content[][] = [
  [serialOf('2026-04-06 08:00'), 2.3, null],
  [serialOf('2026-04-07 08:00'), 2.22, null],
  [serialOf('2026-04-08 08:10'), 2.13, null],
  [serialOf('2026-04-09 08:00'), 2.3, 0.25],
  [serialOf('2026-04-10 08:00'), 2.22, null],
  [serialOf('2026-04-11 09:00'), 2.15, null],
  [serialOf('2026-04-12 08:30'), 2.28, 0.2],
  [serialOf('2026-04-13 08:00'), 2.2, null],
  [serialOf('2026-04-14 08:00'), 2.11, null],
  [serialOf('2026-04-15 08:00'), 2.3, 0.25],
];

const heading = { headingLook: 'numberHeading' } as const;
const level = (key: string, text: string): TableColumn => ({ key, heading: text, kind: 'number', format: '0.00' });

function rate(row: number, what: string, given: string): Part[] {
  const width = { width: 124 };
  return [
    line({ row, column: 4 }, what, 'section', { columns: 6 }),
    answerTable({
      at: { row: row + 1, column: 4 },
      id: 'LOSSRATE',
      key: what,
      given,
      columns: { '% a day': width, Low: width, High: width, 'R²': width, Verdict: width },
      room: 1,
    }),
  ];
}

/** How fast copper goes where it should not. */
export const loss = demoSheet({
  name: 'Loss',
  title: 'Where the copper goes: copper lost a day, as a share of the level, with its 95 % interval',
  widths: [262, 104, 104, 22, 124, 124, 124, 124, 124, 250],
  parts: [
    line('A3', '1  Bench test: does this filter ceramic take up copper?', 'section', { columns: 3 }),
    table({
      at: 'A4',
      key: 'buckets',
      columns: [
        { key: 'when', heading: '10 L buckets, nothing added', kind: 'time', ...heading },
        level('with', 'With it, mg/L'),
        level('without', 'Without, mg/L'),
      ],
      rows: buckets,
      room: buckets.length,
      body: bodies.given,
    }),
    ...rate(2, 'The bucket with the ceramic', '{buckets.when},{buckets.with}'),
    ...rate(6, 'The other bucket, without it', '{buckets.when},{buckets.without}'),
    line(
      'E11',
      'It absorbs: none of it goes into a copper tank. The other bucket shows that the test itself is steady.',
      'aside',
    ),
    line('A15', '2  Tank Q3: the level keeps falling', 'section', { columns: 3 }),
    table({
      at: 'A16',
      key: 'tank',
      columns: [
        { key: 'when', heading: 'Tested', kind: 'time', ...heading },
        level('copper', 'Copper, mg/L'),
        level('added', 'Added, mg/L'),
      ],
      rows: dosed,
      room: dosed.length,
      body: bodies.given,
    }),
    ...rate(14, 'The tank, its doses taken out', '{tank.when},{tank.copper},{tank.added}'),
    line('E19', 'Added is the rise from the doses since the previous reading, as QT.RISE gives it.', 'aside'),
    line(
      'E20',
      'Chelated copper usually loses up to 0.5 % a day (common practice); this tank loses seven times that.',
      'aside',
    ),
    line('E21', 'Found on 15 April: a bag of carbon, forgotten in the filter.', 'aside'),
  ],
});
