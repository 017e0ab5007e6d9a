import { eventKinds } from '../log/waterEvents.js';
import { daily, type Rule, type Found, type FindingWords } from './rule.js';
import type { Treatment } from './treatment.js';

interface StrengthMissing {
  readonly code: 'strength-missing';
}

/** Doses, and no strength on the card: a note, once, at the first dose. What hangs on the level model is not looked for. */
export const strengthMissing: Rule<StrengthMissing> = {
  about: 'doses, and no strength on the card: what depends on the level model is not looked for',
  codes: { 'strength-missing': ['note'] },
  sources: ['Arithmetic'],
  needs: [['dose']],
  yieldsTo: [],
  find,
  words,
  examples: [
    {
      log: daily('Cu|dose', '1.1|4', '1.3|'),
      card: 'volume|200 L\nform|chelated',
      finds: ['note 2 strength-missing'],
    },
    { log: daily('Cu|dose', '1.1|4', '1.3|'), finds: [] },
  ],
};

function find({ events, card }: Treatment): readonly Found<StrengthMissing>[] {
  if (card.strength !== null) return [];
  const { count, kind } = events;
  let first = 0;
  while (first < count && kind[first] !== eventKinds.dose) first++;
  if (first === count) return [];
  const at = { when: events.when[first] ?? NaN, row: events.row[first] ?? 0, source: 'Arithmetic' } as const;
  return [{ code: 'strength-missing', severity: 'note', ...at }];
}

function words(): FindingWords {
  return {
    finding:
      'Doses are logged, but the card has no strength: slips of the pen, doses written twice, absorbers, copper in the ' +
      'top-off and a level below the band between tests are not looked for; write it on the card, see QT.STRENGTH.',
    why: 'Without the strength of the solution nobody knows what a dose adds, and the level between tests cannot be followed.',
  };
}
