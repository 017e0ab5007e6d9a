import { instantDays, secondDays } from '../units/quantity.js';
import { countedHolds, holdAt } from './countedHolds.js';
import { fishTexts } from './fishTexts.js';
import { daily, type Rule, type Found, type FindingWords } from './rule.js';
import { cut } from './phrases.js';
import type { Treatment } from './treatment.js';

interface Newcomer {
  readonly code: 'newcomer';
  readonly fish: string;
  readonly day: number;
  readonly restart: boolean;
}

/** A new, untreated fish during the hold: shown as a warning; the card says whether everyone starts again. */
export const newcomer: Rule<Newcomer> = {
  about: 'a new, untreated fish during the hold',
  codes: { newcomer: ['warning'] },
  sources: ['Practice'],
  needs: [['copper'], ['fish in', 'note']],
  yieldsTo: [],
  find,
  words,
  examples: [
    { log: daily('Cu|fish in', '2.25|3 chromis', 2.25, '2.25|1 firefish', 2.25), finds: ['warning 4 newcomer'] },
    { log: daily('Cu|fish in', '0|3 chromis', 2.25, 2.25), finds: [] },
  ],
};

function find(treatment: Treatment): readonly Found<Newcomer>[] {
  const { log, card } = treatment;
  const texts = fishTexts(log, 'fish in');
  if (texts.length === 0) return [];
  const holds = countedHolds(treatment);
  const found: Found<Newcomer>[] = [];
  for (const { entry, text } of texts) {
    const when = log.when[entry] ?? NaN;
    const hold = holdAt(holds, when);
    if (hold === null || when - hold.from < instantDays || when >= hold.reached - secondDays) continue;
    const day = Math.floor(when - hold.from + secondDays) + 1;
    const at = { when, row: log.row[entry] ?? 0, source: 'Practice' } as const;
    found.push({
      ...at,
      code: 'newcomer',
      severity: 'warning',
      fish: text,
      day,
      restart: card.newcomers === 'restart',
    });
  }
  return found;
}

function words({ fish, day, restart }: Newcomer): FindingWords {
  return {
    finding:
      `"${cut(fish, 40)}" came in on hold day ${day}: ` +
      (restart
        ? 'the card says that all start again, so day one for every fish is now.'
        : 'its own days begin now, the others count on as the card says.'),
    why: 'A new, untreated fish brings its own disease into the hold; whether all start again is the keeper’s choice.',
  };
}
