import { anyTextFits } from '../log/table/anyTextFits.js';
import { copperPresence } from './copperPresence.js';
import { isDenied } from './isDenied.js';
import { daily, type Rule, type Found, type FindingWords } from './rule.js';
import { rounded } from './phrases.js';
import type { Treatment } from './treatment.js';

interface LiquidAmmoniaTest {
  readonly code: 'liquid-ammonia-test';
  /** null: a liquid test is noted, no number is written. */
  readonly total: number | null;
}

const maybe = /ammoni|nh[34]/i;
const liquidTest =
  /\b(?:liquid|drops?|reagent|salicylate|nessler|titration)\b[^.;\n]{0,40}\b(?:ammonia|nh[34])|\b(?:ammonia|nh[34])\b[^.;\n]{0,30}\b(?:liquid|drops?|reagent|salicylate|nessler|titration)\b/i;
const indicator = /\bin[- ]tank\b|\bindicator\b/i;

/**
 * Liquid ammonia tests read falsely positive in copper-treated water; an in-tank indicator still works. Noted once, at
 * the first ammonia above zero, or the first liquid test written of, while copper is in the water.
 *
 * Source: [Practice].
 */
export const liquidAmmoniaTest: Rule<LiquidAmmoniaTest> = {
  about: 'ammonia read by a liquid test while copper is in the water',
  codes: { 'liquid-ammonia-test': ['note'] },
  sources: ['Practice'],
  needs: [['ammonia', 'note', 'signs'], ['copper']],
  yieldsTo: [],
  find,
  words,
  examples: [
    { log: daily('Cu|NH3', 2.25, '2.25|0.5'), finds: ['note 3 liquid-ammonia-test'] },
    { log: daily('Cu|NH3', 2.25, '2.25|0'), finds: [] },
  ],
};

function find(treatment: Treatment): readonly Found<LiquidAmmoniaTest>[] {
  const { log } = treatment;
  const { ammonia } = log.numbers;
  const { note, signs } = log.texts;
  const isMaybe = (text: string): boolean => maybe.test(text);
  if (ammonia === null && !anyTextFits(note, isMaybe) && !anyTextFits(signs, isMaybe)) return [];
  const present = copperPresence(treatment);
  for (let index = 0; index < log.count; index++) {
    if (present[index] !== 1) continue;
    const total = ammonia?.[index] ?? NaN;
    const said = note?.[index] ?? '';
    const isRead = total > 0 && !(said !== '' && indicator.test(said));
    if (!isRead && !isNoted(said) && !isNoted(signs?.[index] ?? '')) continue;
    const at = { when: log.when[index] ?? null, row: log.row[index] ?? null };
    return [{ code: 'liquid-ammonia-test', total: isRead ? total : null, severity: 'note', ...at, source: 'Practice' }];
  }
  return [];
}

function words({ total }: LiquidAmmoniaTest): FindingWords {
  return {
    finding: `${total === null ? 'A liquid ammonia test' : `Ammonia ${rounded(total)} mg/L`} under copper: confirm it by an in-tank indicator, which still works.`,
    why: 'Liquid ammonia tests read falsely positive in copper-treated water.',
  };
}

function isNoted(text: string): boolean {
  if (text === '' || !maybe.test(text)) return false;
  const match = liquidTest.exec(text);
  return match !== null && !isDenied(text, { from: match.index, to: match.index + match[0].length });
}
