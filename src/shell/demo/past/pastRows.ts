import { serialOf } from '../serialOf.js';
import type { PlanCell } from '../sheetPlan.js';

/** A row of the keeper's own log; what is not said is an empty cell. */
interface PastRow {
  /** Written on the first row of a day only, as people do. */
  readonly date?: string;
  readonly time: string;
  readonly copper?: number | string;
  /** [mL] */
  readonly dose?: number;
  /** [US gallons] */
  readonly change?: number;
  readonly gravity?: number;
  /** [°F] */
  readonly temperature?: number;
  readonly ammonia?: number;
  readonly fishIn?: string;
  readonly fishOut?: string;
  readonly dead?: string;
  readonly feeding?: string;
  /** The keeper's own count. */
  readonly day?: number;
  readonly by?: string;
  readonly comment?: string;
}

const kept: readonly PastRow[] = [
  {
    date: '2026-01-04',
    time: '18:30',
    copper: '<0.05',
    gravity: 1.024,
    temperature: 77,
    by: 'TM',
    comment: 'before any copper',
  },
  { time: '19:30', fishIn: '6 chromis, 2 clownfish', by: 'TM' },
  { date: '2026-01-05', time: '8:00 AM', dose: 3.9, feeding: 'yes', by: 'TM', comment: 'three doses a day' },
  { time: '2:00 PM', dose: 3.9, by: 'TM' },
  { time: '8:00 PM', copper: 0.38, dose: 3.9, by: 'OV' },
  { date: '2026-01-06', time: '8:00 AM', copper: 0.56, dose: 3.9, temperature: 77.2, by: 'TM' },
  { time: '2:00 PM', dose: 3.9, by: 'TM' },
  { time: '8:00 PM', copper: 0.93, dose: 3.9, feeding: 'all eating', by: 'OV' },
  { date: '2026-01-07', time: '8:00 AM', copper: 1.1, dose: 3.9, temperature: 77.2, by: 'TM' },
  { time: '2:00 PM', dose: 3.9, by: 'TM' },
  { time: '8:00 PM', copper: 1.49, dose: 3.9, by: 'OV' },
  { time: '8:25 PM', dose: 3.9, by: 'TM', comment: 'evening dose' },
  { date: '2026-01-08', time: '8:00 AM', copper: 1.88, dose: 3.9, by: 'TM', comment: 'higher than planned?' },
  { time: '2:00 PM', dose: 3.9, by: 'TM' },
  { time: '8:00 PM', copper: 2.24, by: 'OV', comment: 'therapeutic' },
  { date: '2026-01-09', time: '8:00 AM', copper: 2.25, temperature: 77.4, feeding: 'yes', day: 1, by: 'TM' },
  { date: '2026-01-10', time: '8:00 AM', copper: '2.24 ppm', feeding: 'yes', day: 2, by: 'TM' },
  { date: '2026-01-11', time: '0830', copper: 2.22, gravity: 1.024, day: 3, by: 'OV' },
  {
    date: '2026-01-12',
    time: '8:00 AM',
    copper: '~2.2',
    feeding: 'yes',
    day: 4,
    by: 'TM',
    comment: 'colour hard to tell',
  },
  { date: '2026-01-13', time: '8:00 AM', copper: 2.2, change: 9, day: 5, by: 'OV' },
  { time: '8:00 PM', copper: 1.85, feeding: 'yes', day: 5, by: 'OV', comment: 'no copper was in the new water' },
  {
    date: '2026-01-14',
    time: '8:00 AM',
    copper: 1.84,
    dose: 8.5,
    day: 6,
    by: 'TM',
    comment: 'topped the copper up again',
  },
  { time: '8:00 PM', copper: 2.24, temperature: 77.2, day: 6, by: 'OV' },
  { date: '2026-01-15', time: '8:00 AM', copper: 2.23, feeding: 'yes', day: 7, by: 'TM' },
  { date: '2026-01-16', time: '8:00 AM', copper: 2.24, day: 8, by: 'TM' },
  { date: '2026-01-17', time: '8:00 AM', copper: 2.22, feeding: 'all eating', day: 9, by: 'TM' },
  {
    date: '2026-01-18',
    time: '9:15 AM',
    copper: '2.2',
    change: 8,
    gravity: 1.023,
    day: 10,
    by: 'OV',
    comment: 'new water matched this time',
  },
  {
    date: '2026-01-19',
    time: '8:00 AM',
    copper: 2.21,
    fishIn: '1 yellow tang',
    day: 11,
    by: 'TM',
    comment: 'tang from another tank, untreated',
  },
  { date: '2026-01-20', time: '8:00 AM', copper: 2.2, feeding: 'yes', day: 12, by: 'TM', comment: 'away until Friday' },
  {
    date: '2026-01-23',
    time: '10:00 PM',
    copper: 2.19,
    feeding: 'yes',
    day: 15,
    by: 'TM',
    comment: 'back home, nobody tested',
  },
  { date: '2026-01-24', time: '8:00 AM', copper: 2.18, temperature: 77, day: 16, by: 'TM' },
  {
    date: '2026-01-25',
    time: '8:00 AM',
    copper: 2.19,
    change: 8,
    feeding: 'yes',
    day: 17,
    by: 'OV',
    comment: 'premixed',
  },
  { time: '5:00 PM', fishOut: '2 clownfish to display', by: 'OV', comment: 'they look fine' },
  { date: '2026-01-26', time: '8:00 AM', copper: 2.18, day: 18, by: 'TM' },
  { date: '2026-01-27', time: '8:00 AM', copper: 2.16, feeding: 'yes', day: 19, by: 'TM' },
  { date: '2026-01-28', time: '8:00 AM', copper: 2.17, day: 20, by: 'TM' },
  { date: '2026-01-29', time: '8:00 AM', copper: 2.16, dose: 3, day: 21, by: 'OV', comment: 'a little more' },
  { date: '2026-01-30', time: '8:00 AM', copper: 2.31, gravity: 1.023, feeding: 'yes', day: 22, by: 'TM' },
  { date: '2026-01-31', time: '8:00 AM', copper: 2.29, temperature: 77.4, day: 23, by: 'TM' },
  {
    date: '2026-02-01',
    time: '8:00 AM',
    copper: 2.29,
    change: 8,
    feeding: 'all eating',
    day: 24,
    by: 'OV',
    comment: 'premixed',
  },
  {
    date: '2026-02-02',
    time: '8:00 AM',
    copper: 2.28,
    ammonia: 0.5,
    day: 25,
    by: 'TM',
    comment: 'ammonia by the liquid test',
  },
  { time: '8:15 AM', by: 'TM', comment: 'ammonia binder, 10 mL' },
  { time: '6:00 PM', dead: '2 chromis', by: 'OV', comment: 'on the bottom, gasping before' },
  {
    date: '2026-02-03',
    time: '8:00 AM',
    copper: 2.27,
    change: 15,
    dead: '1 chromis',
    day: 26,
    by: 'TM',
    comment: 'big change, premixed',
  },
  { time: '6:00 PM', feeding: 'tang not eating', by: 'OV' },
  { date: '2026-02-04', time: '8:00 AM', copper: 2.27, feeding: 'tang eating again', day: 27, by: 'TM' },
  {
    date: '2026-02-05',
    time: '8:00 AM',
    copper: 2.26,
    gravity: 1.017,
    feeding: 'yes',
    day: 28,
    by: 'OV',
    comment: 'too much fresh water',
  },
  { date: '2026-02-06', time: '8:00 AM', copper: 2.26, gravity: 1.019, feeding: 'yes', day: 29, by: 'TM' },
  { date: '2026-02-07', time: '8:00 AM', copper: 'void 1.26', by: 'TM', comment: 'vial not filled, tested again' },
  { time: '8:10 AM', copper: 2.25, feeding: 'all eating', day: 30, by: 'TM', comment: 'DAY 30, done' },
  {
    date: '2026-02-08',
    time: '8:00 AM',
    copper: 2.24,
    change: 27,
    feeding: 'yes',
    by: 'TM',
    comment: 'copper out, half the water',
  },
  { date: '2026-02-09', time: '8:00 AM', copper: 1.12, change: 27, feeding: 'yes', by: 'TM' },
  { date: '2026-02-10', time: '8:00 AM', copper: 0.57, change: 27, gravity: 1.024, by: 'TM' },
  { date: '2026-02-11', time: '8:00 AM', copper: 0.29, change: 27, feeding: 'yes', by: 'OV' },
  { date: '2026-02-12', time: '8:00 AM', copper: 0.15, feeding: 'all eating', by: 'TM' },
  { date: '2026-02-14', time: '8:00 AM', copper: 0.14, feeding: 'yes', by: 'TM', comment: 'to display next week' },
];

/** The log's columns in the keeper's own words, each with its width and its cell. */
export const pastColumns: readonly (readonly [
  heading: string,
  width: number,
  cell: (row: PastRow) => PlanCell | undefined,
])[] = [
  ['Date', 86, ({ date }) => (date === undefined ? undefined : serialOf(`${date} 00:00`))],
  ['Time', 68, ({ time }) => time],
  ['Cu test', 72, ({ copper }) => copper],
  ['meds mL', 70, ({ dose }) => dose],
  ['PWC gal', 66, ({ change }) => change],
  ['S.G.', 50, ({ gravity }) => gravity],
  ['Temp F', 60, ({ temperature }) => temperature],
  ['NH3', 46, ({ ammonia }) => ammonia],
  ['new fish', 140, ({ fishIn }) => fishIn],
  ['moved', 138, ({ fishOut }) => fishOut],
  ['morts', 72, ({ dead }) => dead],
  ['feeding', 126, ({ feeding }) => feeding],
  ['day #', 48, ({ day }) => day],
  ['lights', 46, () => undefined],
  ['who', 40, ({ by }) => by],
  ['comments', 236, ({ comment }) => comment],
];

/** The rows as cells. */
export const pastRows: readonly (readonly PlanCell[])[] = kept.map((row) =>
  pastColumns.map(([, , cell]) => cell(row) ?? null),
);
