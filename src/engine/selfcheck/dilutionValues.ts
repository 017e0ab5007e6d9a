import { ok } from '../result/result.js';
import { copperMgPerLitre, fraction, litres } from '../units/quantity.js';
import { changesToClear } from '../water/changesToClear.js';
import { levelAfterChange } from '../water/levelAfterChange.js';
import { answerOrNull, type PublishedValue } from './publishedValue.js';

/** Water changes. */
export const dilutionValues: readonly PublishedValue[] = [
  {
    check: 'share left by 3 changes of 25 %',
    printed: '0.421875',
    computed: () => levelAfterQuarters(3),
    source: { key: 'Arithmetic', at: '0.75 × 0.75 × 0.75' },
  },
  {
    check: 'changes of 50 % from 0.20 to 0.01 mg/L',
    printed: '5',
    computed: () => changesToHundredth(0.5),
    source: { key: 'Arithmetic', at: '0.20 × 0.5^5 = 0.00625, 0.20 × 0.5^4 = 0.0125' },
  },
  {
    check: 'changes of 25 % from 0.20 to 0.01 mg/L',
    printed: '11',
    computed: () => changesToHundredth(0.25),
    source: { key: 'Arithmetic', at: '0.20 × 0.75^11 = 0.0084, 0.20 × 0.75^10 = 0.0113' },
  },
];

function levelAfterQuarters(changes: number): number | null {
  const [volume, change, replacement] = [litres(100), litres(25), copperMgPerLitre(0)];
  let level = ok(copperMgPerLitre(1));
  for (let n = 0; n < changes; n++) {
    const after = levelAfterChange({ volume, level: level.value, change, replacement });
    if (!after.ok) return null;
    level = after;
  }
  return level.value;
}

function changesToHundredth(share: number): number | null {
  return answerOrNull(
    changesToClear({ level: copperMgPerLitre(0.2), wanted: copperMgPerLitre(0.01), share: fraction(share) }),
  );
}
