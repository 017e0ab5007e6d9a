import * as limits from '../../limits/limits.js';
import { secondBathWindow } from '../../plan/secondBathWindow.js';
import type { Treatment } from '../../rules/treatment.js';
import type { Gate } from './gate.js';
import { praziquantelBaths } from './praziquantelBaths.js';

/** Whether praziquantel is noted: copper days never count for flukes. A second bath belongs in its window. */
export function flukesGate(treatment: Treatment): Gate {
  const [first, ...later] = praziquantelBaths(treatment);
  if (first === undefined) {
    return { name: 'flukes treated', met: 'no', since: null, why: { code: 'no-praziquantel' } };
  }
  const { from, until } = secondBathWindow();
  // Noted at another time of day, a bath is still of that day.
  const second =
    later.find((when) => when - first >= from - limits.bathDay.value && when - first <= until + limits.bathDay.value) ??
    null;
  const why = { code: 'praziquantel', first, second, from, until } as const;
  return { name: 'flukes treated', met: 'yes', since: second ?? first, why };
}
