import { meterFit } from '../chance/meterFit.js';
import type { Card } from '../log/card.js';
import { highestLevel } from '../log/reading.js';
import { copperMgPerLitre, levelTolerance } from '../units/quantity.js';
import type { Rule } from './rule.js';

type Reason = 'limit-unread' | 'too-coarse' | 'free-test';

/** The meter on the card cannot show that the level is in the band: a warning, once. */
export const meterCannotShow: Rule = ({ card }) => {
  const cannot = reasonOf(card);
  if (cannot === null) return [];
  const { low, high } = card.band;
  const of = { when: null, row: null, source: 'Arithmetic', low, top: high, from: card.meterFrom } as const;
  return [{ ...of, ...cannot, code: 'meter-cannot-show', severity: 'warning' }];
};

function reasonOf(card: Card): { reason: Reason; needed: number | null } | null {
  const { band, meterAccuracy, meterPercent, meterFrom } = card;
  // A test for free copper reads complexed copper low.
  if (card.reads === 'free' && (card.form === 'amine' || card.form === 'chelated')) {
    return { reason: 'free-test', needed: null };
  }
  if (meterFrom !== null && meterFrom > band.low + levelTolerance) return { reason: 'limit-unread', needed: null };
  if (meterAccuracy === null && meterPercent === 0) return null;
  const fit = meterFit({
    band,
    readsFrom: meterFrom ?? copperMgPerLitre(0),
    readsTo: copperMgPerLitre(highestLevel),
    accuracy: meterAccuracy ?? copperMgPerLitre(0),
    percent: meterPercent,
  });
  if (!fit.ok || fit.value.low.kind === 'shown') return null;
  return { reason: 'too-coarse', needed: fit.value.low.kind === 'outside-band' ? fit.value.low.reading : null };
}
