import { copperCriteria } from '../chemistry/copperCriteria.js';
import { timesAcuteCriterion } from '../chemistry/timesAcuteCriterion.js';
import { copperMgPerLitre } from '../units/quantity.js';
import type { PublishedValue } from './publishedValue.js';

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
