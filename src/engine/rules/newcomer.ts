import { instantDays, secondDays } from '../units/quantity.js';
import { countedHolds } from './countedHolds.js';
import type { Finding } from './finding.js';
import { fishTexts } from './fishTexts.js';
import { holdAt } from './holdAt.js';
import type { Rule } from './rule.js';

const notes =
  /\bnewcomers?\b|\bnew (?:fish|arrivals?)\b(?! (?:food|store|tank|list))|\b(?:added|adding|put in) (?:\w+ ){0,3}fish\b(?! food)|\bfish (?:was |were )?added\b/i;
const none = /\b(?:no|without|not) (?:any )?(?:newcomers?|new|added|adding|fish)\b/i;

/** A new, untreated fish during the hold: shown as a warning; the card says whether everyone starts again. */
export const newcomer: Rule = (treatment) => {
  const { log, card } = treatment;
  const texts = fishTexts(log, 'fish in', notes);
  if (texts.length === 0) return [];
  const holds = countedHolds(treatment);
  const found: Finding[] = [];
  for (const { entry, text } of texts) {
    const when = log.when[entry] ?? NaN;
    const hold = holdAt(holds, when);
    if (hold === null || when - hold.from < instantDays || when >= hold.reached - secondDays) continue;
    if (log.texts['fish in']?.[entry] !== text && none.test(text)) continue;
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
};
