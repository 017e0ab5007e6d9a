import * as limits from '../../limits/limits.js';
import { shownNumber } from '../../units/shown.js';
import { named } from '../sourceText.js';
import type { PlanTexts } from './planTexts.js';

/** Before the first dose. */
export const preparationTexts = {
  screen: () => ({
    doing: 'screen: check every fish with QT.TOLERANCE; no invertebrates in this tank, and no fish meant for eating',
    why: `common practice; copper kills most invertebrates (${named('YanongFA165')}); a level inside the band can kill fish too (${named('ZecHadfieldHungerford2021')})`,
  }),
  measure: () => ({
    doing:
      'measure: net volume with QT.NETVOLUME; bare tank with heater, water movement, plastic pipe and a running biological filter; no rock, coral sand, carbon or resin',
    why: 'common practice: a wrong volume makes every dose wrong, and rock, sand and carbon take up copper',
  }),
  baseline: () => ({
    doing: `test before any dose: copper must read none, ammonia none, salinity ${limits.salinityWarning.value} g/kg or more`,
    why: `common practice; salinity ${named('ZecHadfieldHungerford2021')}`,
  }),
  supplies: ({ pace, tests, testsAfter, aim, lossPerDay }) => ({
    doing: `have ready: ${tests} copper tests, and ${testsAfter} for afterwards; copper solution in mL = litres × ${shownNumber(aim)} ÷ its mg/mL for raising, as much per litre of replacement water, and up to ${shownNumber(lossPerDay * 100)} % of the first a day for losses`,
    why: `common practice: one test a day, ${pace === 'urgent' ? 'four' : 'a second'} while raising, a tenth spare; see QT.DOSE and QT.CHANGEDOSE`,
  }),
  handle: () => ({
    doing: 'read QT.CAUTIONS; gloves and goggles; an aquatic veterinarian decides, local law and the label come first',
    why: `${named('ICSC1416')}: harmful if swallowed, serious eye damage, very toxic to aquatic life`,
  }),
  'keep-out': () => ({
    doing: 'keep out of this tank: ammonia binders, detoxifying conditioners, reducing dechlorinators',
    why: 'common practice: danger, they set copper free from amine and chelated products and can kill in hours',
  }),
  'short-course': ({ days }) => ({
    doing: `note: ${shownNumber(days)} days is a short course; plan ${limits.holdDays.value}`,
    why: `${named('ZecHadfieldHungerford2021')}: courses under ${limits.shortCourse.value} days were counted as short; ${limits.holdDays.value} days is common practice`,
  }),
} satisfies Partial<PlanTexts>;
