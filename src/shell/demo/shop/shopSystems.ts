import { serialOf } from '../serialOf.js';
import { addedRow, changedReadings, leftOut, testFrom } from './planted.js';
import type { ShopSystem } from './shopSystem.js';

const chelated = { form: 'chelated', strength: 20, meter: 0.05, lossPerDay: 0.003, raisingDays: 4 } as const;
const amine = { form: 'amine', strength: 5, meter: 0.02, lossPerDay: 0.01, raisingDays: 4 } as const;
const sulfate = { form: 'sulfate', strength: 2, meter: 0.006, lossPerDay: 0.025, raisingDays: 4 } as const;

/** When carbon went into the filter of B2, and how fast it takes copper. [share of the level a day] */
const carbonAt = '2026-05-16 18:00';
const carbonRate = 0.14;

/** Three racks of four systems, at different points of their treatment, each with what happened in it. */
export const shopSystems: readonly ShopSystem[] = [
  {
    ...chelated,
    name: 'A1',
    volume: 640,
    start: '2026-04-20 07:40',
    testsADay: 2,
    changeEveryDays: 7,
    fish: '24 blue chromis, 6 clownfish',
    story: 'Nothing went wrong.',
  },
  {
    ...chelated,
    name: 'A2',
    volume: 640,
    start: '2026-04-12 07:45',
    testsADay: 2,
    changeEveryDays: 6,
    fish: '8 yellow tang, 4 royal gramma',
    story: 'On 1 May a change without copper in the new water took the level below the band: back to day one.',
    plant: (rows, { volume, strength }) => {
      addedRow(rows, '2026-05-01 10:30', 'TM', { change: 120, note: 'copper forgotten in new water' });
      changedReadings(
        rows,
        { from: '2026-05-01 10:30', to: '2026-05-02 06:00' },
        (level) => level * (1 - 120 / volume),
      );
      leftOut(rows, { from: '2026-05-01 10:30', to: '2026-05-02 12:00' }, ({ dose }) => dose !== undefined);
      const next = testFrom(rows, '2026-05-02 06:00');
      next.copper = Number((Number(next.copper) * (1 - 120 / volume)).toFixed(2));
      next.dose = Number((((120 / volume) * 2.2 * volume) / strength).toFixed(1));
      next.note = 'dip, raising again';
    },
  },
  {
    ...chelated,
    name: 'A3',
    volume: 420,
    start: '2026-05-15 07:50',
    testsADay: 2,
    changeEveryDays: 7,
    fish: '6 powder blue tang',
    story: 'Raising since 15 May, five doses a day.',
  },
  {
    ...amine,
    name: 'A4',
    volume: 300,
    start: '2026-04-22 08:00',
    testsADay: 2,
    changeEveryDays: 7,
    fish: '10 lyretail anthias, 5 six-line wrasse',
    story: 'On the evening of 17 May two people gave the same dose: above the band this morning.',
    plant: (rows, { volume, strength }) => {
      leftOut(rows, { from: '2026-05-17 12:00', to: '2026-05-18 12:00' }, ({ dose }) => dose !== undefined);
      addedRow(rows, '2026-05-17 20:40', 'JK', { dose: 3.5 });
      addedRow(rows, '2026-05-17 21:10', 'TM', { dose: 3.5, note: 'evening dose' });
      const rise = (7 * strength) / volume;
      changedReadings(rows, { from: '2026-05-17 21:10', to: '2026-05-19 00:00' }, (level) => level + rise);
    },
  },
  {
    ...sulfate,
    name: 'B1',
    volume: 240,
    start: '2026-04-18 07:55',
    testsADay: 2,
    changeEveryDays: 5,
    fish: '12 banggai cardinal, 8 pajama cardinal',
    story: 'On 6 May a reading was written with its point moved: ten times what it was.',
    plant: (rows) => {
      const slip = testFrom(rows, '2026-05-06 12:00');
      slip.copper = Number((Number(slip.copper) * 10).toFixed(1));
    },
  },
  {
    ...sulfate,
    name: 'B2',
    volume: 240,
    start: '2026-04-24 08:05',
    testsADay: 2,
    changeEveryDays: 6,
    fish: '6 lawnmower blenny, 10 firefish',
    story: 'Since 16 May a bag of carbon in the filter takes copper out: below the band this morning.',
    plant: (rows) => {
      leftOut(
        rows,
        { from: carbonAt, to: '2026-05-19 00:00' },
        ({ dose, copper }) => dose !== undefined && copper === undefined,
      );
      for (const row of rows) if (row.when > serialOf(carbonAt)) delete row.dose;
      addedRow(rows, carbonAt, 'JK', { note: 'carbon bag in the filter' });
      const days = (when: number): number => when - serialOf(carbonAt);
      changedReadings(
        rows,
        { from: carbonAt, to: '2026-05-19 00:00' },
        (level, when) => level * Math.exp(-carbonRate * days(when)),
      );
    },
  },
  {
    ...chelated,
    name: 'B3',
    volume: 380,
    start: '2026-04-09 08:10',
    testsADay: 2,
    changeEveryDays: 7,
    fish: '5 emperor angelfish, 4 copperband butterfly',
    story: 'Thirty days without a break are done.',
  },
  {
    ...chelated,
    name: 'B4',
    volume: 380,
    start: '2026-04-14 08:15',
    testsADay: 2,
    changeEveryDays: 8,
    fish: '9 clownfish',
    story: 'From 1 to 6 May nobody tested, longer than 96 hours: the hold starts anew.',
    plant: (rows) => {
      leftOut(rows, { from: '2026-05-01 12:00', to: '2026-05-06 07:00' });
      testFrom(rows, '2026-05-06 07:00').note = 'back from stocktaking';
    },
  },
  {
    ...amine,
    name: 'C1',
    volume: 200,
    start: '2026-04-27 08:20',
    testsADay: 2,
    changeEveryDays: 6,
    fish: '14 blue chromis, 3 flame angelfish',
    story: 'Three chromis died on 10 May; since 17 May the angelfish do not eat.',
    plant: (rows) => {
      addedRow(rows, '2026-05-10 18:30', 'JK', { dead: 3, note: '3 blue chromis' });
      for (const row of rows)
        if (row.when > serialOf('2026-05-17 12:00') && row.eating !== undefined) row.eating = 'angelfish not eating';
      leftOut(rows, { from: '2026-05-17 22:00', to: '2026-05-19 00:00' }, ({ copper }) => copper === undefined);
      for (const row of rows) if (row.when > serialOf('2026-05-17 22:00')) delete row.dose;
    },
  },
  {
    ...chelated,
    name: 'C2',
    volume: 260,
    start: '2026-04-25 08:25',
    testsADay: 2,
    changeEveryDays: 7,
    fish: '7 bicolor blenny',
    story: 'On 11 May somebody wrote LOW instead of a number: nobody knows whether that day broke the hold.',
    plant: (rows) => {
      testFrom(rows, '2026-05-11 12:00').copper = 'LOW';
    },
  },
  {
    ...chelated,
    name: 'C3',
    volume: 260,
    start: '2026-04-17 08:30',
    testsADay: 2,
    changeEveryDays: 5,
    fish: '8 clownfish, 6 royal gramma',
    story: 'Two clownfish were moved out on 28 April, too early; on 7 May a conditioner went into copper water.',
    plant: (rows) => {
      addedRow(rows, '2026-04-28 16:00', 'TM', { fishOut: '2 clownfish to display' });
      addedRow(rows, '2026-05-07 17:15', 'JK', { note: 'dechlorinator in the new water' });
    },
  },
  {
    ...sulfate,
    name: 'C4',
    volume: 160,
    start: '2026-04-28 08:35',
    testsADay: 2,
    changeEveryDays: 6,
    fish: '16 blue chromis',
    story: 'No test since the evening of 16 May.',
    plant: (rows) => {
      leftOut(rows, { from: '2026-05-16 21:30', to: '2026-05-19 00:00' });
    },
  },
];
