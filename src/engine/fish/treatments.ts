import type { ReferenceKey } from '../references/references.js';
import type { ConditionKey } from './condition.js';
import type { CopperEffect, Remedy, Timing, Treatment } from './treatment.js';

/** Praziquantel in the bath whose loss was measured. [mg/L] */
export const praziquantelBath = 2;
/** When the second bath falls, so that what hatched after the first is caught before it lays: derived, 25 °C. [days] */
export const secondBath = { from: 7, to: 15 } as const;

type Line = readonly [give: Remedy, when: Timing, sources: readonly ReferenceKey[], derived?: true];

/** The advice on every condition, in the order in which to read it. */
export const treatments: readonly Treatment[] = [
  ...lines('white-spot', 'stops-reinfection', [
    ['copper', 'thirty-days-of-white-spot', ['Practice', 'Colorni1985']],
    ['copper', 'within-a-day', ['Practice']],
    ['copper-in-public-aquaria', 'twenty-one-days', ['ZecHadfieldHungerford2021']],
    ['no-copper-for-this-fish', 'intolerant-fish', ['Memory']],
    ['fallow-display', 'fallow-days', ['Practice', 'ColorniBurgess1997']],
  ]),
  ...lines('velvet', 'stops-reinfection', [
    ['copper', 'within-a-day', ['Practice']],
    ['copper', 'thirty-days', ['Practice']],
    ['chloroquine', 'instead-of-copper', ['Memory']],
    ['fallow-display', 'fallow-days', ['Practice']],
  ]),
  ...lines('trichodina', 'stops-reinfection', [
    ['copper', 'thirty-days', ['Practice']],
    ['formalin', 'instead-of-copper', ['Memory']],
  ]),
  ...lines('brooklynella', 'not-treated', [
    ['formalin', 'at-once', ['Practice']],
    ['metronidazole-with-copper', 'beside-copper', ['Practice']],
  ]),
  ...lines('uronema', 'not-reached', [['metronidazole-perhaps', 'early', ['Practice']]]),
  ...lines('flukes', 'disputed', [
    ['praziquantel-bath', 'bath-fades', ['Practice', 'ThomasEtAl2016']],
    ['praziquantel-again', 'second-bath', ['BondadReantasoEtAl1995'], true],
    ['praziquantel-with-copper', 'emergency', ['Practice']],
    ['copper-alone-not-enough', 'whatever-the-hold', ['FishHealthPage', 'Practice']],
  ]),
  ...lines('black-spot', 'not-treated', [
    ['praziquantel', 'before-or-after-copper', ['Practice']],
    ['praziquantel-with-copper', 'emergency', ['Practice']],
  ]),
  ...lines('bacterial', 'not-treated', [
    ['water-tests', 'first-ammonia', ['Practice']],
    ['antibiotic', 'after-culture', ['Memory']],
  ]),
  ...lines('worms', 'not-treated', [
    ['praziquantel-in-food', 'with-food', ['Memory']],
    ['fenbendazole-in-food', 'with-food', ['Memory']],
  ]),
  ...lines('lymphocystis', 'not-treated', [
    ['nothing', 'meanwhile', ['Memory']],
    ['good-water', 'meanwhile', ['Memory']],
  ]),
  ...lines('unknown', 'only-some', [
    ['water-tests', 'first', ['Practice']],
    ['microscope', 'before-any-dose', ['Memory']],
    ['copper', 'if-velvet-likely', ['Practice']],
    ['praziquantel', 'before-or-after-copper', ['Practice']],
  ]),
];

function lines(condition: ConditionKey, copper: CopperEffect, advice: readonly Line[]): readonly Treatment[] {
  const always: Line = ['veterinarian', 'always', ['Practice']];
  return [...advice, always].map(([give, when, sources, derived]) => ({
    condition,
    copper: give === 'veterinarian' ? 'other' : copper,
    give,
    when,
    sources,
    ...(derived === undefined ? {} : { derived }),
  }));
}
