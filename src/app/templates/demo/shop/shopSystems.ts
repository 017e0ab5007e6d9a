import type { FormName } from '../../../../engine/index.js';

/** A system of the shop and its treatment. */
export interface ShopSystem {
  readonly name: string;
  /** [L] */
  readonly volume: number;
  readonly form: FormName;
  /** [mg Cu/mL] */
  readonly strength: number;
  /** The first test, `2026-04-20 07:40`. */
  readonly start: string;
  readonly raisingDays: number;
  readonly testsADay: 1 | 2;
  /** ± mg/L. */
  readonly meter: number;
  /** Share of the level. */
  readonly lossPerDay: number;
  readonly changeEveryDays: number;
  readonly fish: string;
  /** What happened in it, in a sentence for the sheet. */
  readonly story: string;
}

const usual = { raisingDays: 4, testsADay: 2 } as const;
const chelated = { ...usual, form: 'chelated', strength: 20, meter: 0.05, lossPerDay: 0.003 } as const;
const amine = { ...usual, form: 'amine', strength: 5, meter: 0.02, lossPerDay: 0.01 } as const;
const sulfate = { ...usual, form: 'sulfate', strength: 2, meter: 0.006, lossPerDay: 0.025 } as const;

/** Three racks of four systems, at different points of their treatment; what happened in each is planted by `shopTroubles`. */
export const shopSystems: readonly ShopSystem[] = [
  {
    ...chelated,
    name: 'A1',
    volume: 640,
    start: '2026-04-20 07:40',
    changeEveryDays: 7,
    fish: '24 blue chromis, 6 clownfish',
    story: 'Nothing went wrong.',
  },
  {
    ...chelated,
    name: 'A2',
    volume: 640,
    start: '2026-04-12 07:45',
    changeEveryDays: 6,
    fish: '8 yellow tang, 4 royal gramma',
    story: 'On 1 May a water change without copper in the new water took the level below the band: back to day one.',
  },
  {
    ...chelated,
    name: 'A3',
    volume: 420,
    start: '2026-05-15 07:50',
    changeEveryDays: 7,
    fish: '6 powder blue tang',
    story: 'Raising since 15 May, five doses a day.',
  },
  {
    ...amine,
    name: 'A4',
    volume: 300,
    start: '2026-04-22 08:00',
    changeEveryDays: 7,
    fish: '10 lyretail anthias, 5 six-line wrasse',
    story: 'On the evening of 17 May two people gave the same dose: above the band this morning.',
  },
  {
    ...sulfate,
    name: 'B1',
    volume: 240,
    start: '2026-04-18 07:55',
    changeEveryDays: 5,
    fish: '12 banggai cardinal, 8 pajama cardinal',
    story: 'On 6 May a reading was written with its decimal point in the wrong place: ten times too high.',
  },
  {
    ...sulfate,
    name: 'B2',
    volume: 240,
    start: '2026-04-24 08:05',
    changeEveryDays: 6,
    fish: '6 lawnmower blenny, 10 firefish',
    story: 'Since 16 May a bag of carbon in the filter takes copper out: below the band this morning.',
  },
  {
    ...chelated,
    name: 'B3',
    volume: 380,
    start: '2026-04-09 08:10',
    changeEveryDays: 7,
    fish: '5 emperor angelfish, 4 copperband butterfly',
    story: 'Thirty days without a break are done.',
  },
  {
    ...chelated,
    name: 'B4',
    volume: 380,
    start: '2026-04-14 08:15',
    changeEveryDays: 8,
    fish: '9 clownfish',
    story: 'From 1 to 6 May nobody tested, for longer than 96 hours: the hold starts again.',
  },
  {
    ...amine,
    name: 'C1',
    volume: 200,
    start: '2026-04-27 08:20',
    changeEveryDays: 6,
    fish: '14 blue chromis, 3 flame angelfish',
    story: 'Three chromis died on 10 May; since 17 May the angelfish do not eat.',
  },
  {
    ...chelated,
    name: 'C2',
    volume: 260,
    start: '2026-04-25 08:25',
    changeEveryDays: 7,
    fish: '7 bicolor blenny',
    story: 'On 11 May somebody wrote LOW instead of a number: nobody knows whether that day broke the hold.',
  },
  {
    ...chelated,
    name: 'C3',
    volume: 260,
    start: '2026-04-17 08:30',
    changeEveryDays: 5,
    fish: '8 clownfish, 6 royal gramma',
    story: 'Two clownfish were moved out on 28 April, too early; on 7 May a conditioner went into copper water.',
  },
  {
    ...sulfate,
    name: 'C4',
    volume: 160,
    start: '2026-04-28 08:35',
    changeEveryDays: 6,
    fish: '16 blue chromis',
    story: 'No test since the evening of 16 May.',
  },
];
