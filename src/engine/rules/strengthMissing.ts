import { eventKinds } from '../log/waterEvents.js';
import type { Rule } from './rule.js';

/** Doses, and no strength on the card: a note, once, at the first dose. What hangs on the level model is not looked for. */
export const strengthMissing: Rule = ({ events, card }) => {
  if (card.strength !== null) return [];
  const { count, kind } = events;
  let first = 0;
  while (first < count && kind[first] !== eventKinds.dose) first++;
  if (first === count) return [];
  const at = { when: events.when[first] ?? NaN, row: events.row[first] ?? 0, source: 'Arithmetic' } as const;
  return [{ code: 'strength-missing', severity: 'note', ...at }];
};
