import { copperMass } from '../chemistry/copperMass.js';
import { stockStrength } from '../chemistry/stockStrength.js';
import { bandOf } from '../dose/bandOf.js';
import { copperMgPerLitre, litres, saltGrams } from '../units/quantity.js';
import type { PublishedValue } from './publishedValue.js';
import { copperCriteria, timesAcuteCriterion } from '../chemistry/timesAcuteCriterion.js';

/** Levels, stocks and doses that others print. */
export const copperValues: readonly PublishedValue[] = [
  {
    check: 'low limit of the sulfate band, mg/L',
    printed: '0.18',
    computed: () => bandOf('sulfate').low,
    source: { key: 'ZecHadfieldHungerford2021', at: 'free copper held for 21 days' },
  },
  {
    check: 'high limit of the sulfate band, mg/L',
    printed: '0.21',
    computed: () => bandOf('sulfate').high,
    source: { key: 'ZecHadfieldHungerford2021', at: 'free copper held for 21 days' },
  },
  {
    check: 'stock of 3 g pentahydrate made up to 750 mL, mg Cu/mL',
    printed: '1.01805',
    computed: () => pentahydrateStock(3, 0.75),
    source: { key: 'HawaiiExtension', at: 'its recipe is a copy, the strength is worked out', status: 'derived' },
  },
  {
    check: 'stock of 1 g pentahydrate in 250 mL, mg Cu/mL (the page prints 1, to one figure)',
    printed: '1',
    computed: () => pentahydrateStock(1, 0.25),
    source: { key: 'FishHealthPage', at: '"1 g in 250 mL contains 1 mg/mL"' },
  },
  {
    check: 'stock of 1 g pentahydrate in 250 mL, mg Cu/mL (worked out to four figures)',
    printed: '1.018',
    computed: () => pentahydrateStock(1, 0.25),
    source: { key: 'FishHealthPage', at: 'the same stock', status: 'derived' },
  },
  {
    check: 'copper for 200 L to 0.15 mg/L, mg (the page prints 30 grams: a thousandfold misprint, 30 mg is right)',
    printed: '30',
    computed: () => copperMass(litres(200), copperMgPerLitre(0.15)),
    source: { key: 'FishHealthPage', at: 'its worked dose' },
  },
];

function pentahydrateStock(grams: number, volume: number): number {
  return stockStrength({ grams: saltGrams(grams), volume: litres(volume), salt: 'pentahydrate' });
}

/** What treated water does where it is let go. */
export const safetyValues: readonly PublishedValue[] = [
  {
    check: 'acute salt-water criterion for copper, µg/L',
    printed: '4.8',
    computed: () => 1000 * copperCriteria.saltWaterAcute,
    source: { key: 'CFR131', at: 'acute' },
  },
  {
    check: 'chronic salt-water criterion for copper, µg/L',
    printed: '3.1',
    computed: () => 1000 * copperCriteria.saltWaterChronic,
    source: { key: 'CFR131', at: 'chronic' },
  },
  {
    check: '0.20 mg/L as times the acute salt-water criterion',
    printed: '42',
    computed: () => timesAcuteCriterion(copperMgPerLitre(0.2)),
    source: { key: 'CFR131', at: 'ratio to 4.8 µg/L', status: 'derived' },
  },
];
