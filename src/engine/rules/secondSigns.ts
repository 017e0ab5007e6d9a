import { signsAfterArrival } from './signsAfterArrival.js';
import { daily, type Rule, type Found, type FindingWords } from './rule.js';
import { cut, cardinal } from './phrases.js';
import * as limits from '../limits/limits.js';
import { isoFromSerial } from '../../base/isoFromSerial.js';
import type { Treatment } from './treatment.js';

interface SecondSigns {
  readonly code: 'second-signs';
  readonly text: string;
  readonly first: { readonly row: number; readonly when: number } | null;
}

/**
 * Signs a second time, after a recorded recovery or three clear days: stop copper, use another treatment.
 *
 * Source: [Practice].
 */
export const secondSigns: Rule<SecondSigns> = {
  about: `signs a second time, after a recovery or ${cardinal(limits.clearDays.value)} clear days`,
  codes: { 'second-signs': ['danger'] },
  sources: ['Practice'],
  needs: [['signs', 'note']],
  yieldsTo: [],
  find,
  words,
  examples: [
    {
      log: daily('Cu|signs', 2.25, '2.25|lethargic', '2.25|eating again', 2.25, '2.25|lethargic'),
      finds: ['danger 6 second-signs'],
    },
    { log: daily('Cu|signs', 2.25, '2.25|lethargic', '2.25|eating again', 2.25), finds: [] },
  ],
};

function find(treatment: Treatment): readonly Found<SecondSigns>[] {
  if (!treatment.signs.some(({ reading }) => reading === 'sign')) return [];
  const rows = signsAfterArrival(treatment);
  const again = rows.find(({ step }) => step === 'stop copper');
  if (again === undefined) return [];
  const first = rows.find(({ step }) => step === 'test first');
  return [
    {
      code: 'second-signs',
      text: again.text,
      first: first === undefined ? null : { row: first.row, when: first.when },
      severity: 'danger',
      when: again.when,
      row: again.row,
      source: 'Practice',
    },
  ];
}

function words({ text, first }: SecondSigns): FindingWords {
  return {
    finding:
      `"${cut(text)}" is the second time of signs${first === null ? '' : ` (the first: row ${first.row}, ${isoFromSerial(first.when)})`}: ` +
      `stop copper and use another treatment, as an aquatic veterinarian decides.`,
    why:
      `Signs a second time, after a recovery or ${cardinal(limits.clearDays.value)} clear days, mean that this fish does ` +
      'not bear copper, or has something copper does not treat.',
  };
}
