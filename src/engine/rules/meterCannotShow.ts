import { meterFit } from '../chance/meterFit.js';
import type { Card } from '../log/card.js';
import { highestLevel } from '../units/readers/quantityReaders.js';
import { copperMgPerLitre, levelTolerance } from '../units/quantity.js';
import { daily, type Rule, type Found, type FindingWords } from './rule.js';
import { levelText, percentText } from './phrases.js';
import * as limits from '../limits/limits.js';
import type { Treatment } from './treatment.js';

interface MeterCannotShow {
  readonly code: 'meter-cannot-show';
  readonly reason: Reason;
  readonly low: number;
  readonly top: number;
  /** The reading it would take, null: there is none. */
  readonly needed: number | null;
  readonly from: number | null;
}

type Reason = 'limit-unread' | 'too-coarse' | 'free-test';

/** The meter on the card cannot show that the level is in the band: a warning, once. */
export const meterCannotShow: Rule<MeterCannotShow> = {
  about: 'a meter that cannot show that the level is in the band',
  codes: { 'meter-cannot-show': ['warning'] },
  sources: ['Arithmetic'],
  needs: [],
  yieldsTo: [],
  find,
  words,
  examples: [
    {
      log: daily('Cu', 0.5, 0.5),
      card: 'volume|200 L\nform|amine\nmeter accuracy|0.15 mg/L',
      finds: ['warning - meter-cannot-show'],
    },
    { log: daily('Cu', 2.25, 2.25), finds: [] },
  ],
};

function find({ card }: Treatment): readonly Found<MeterCannotShow>[] {
  const cannot = reasonOf(card);
  if (cannot === null) return [];
  const { low, high } = card.band;
  const of = { when: null, row: null, source: 'Arithmetic', low, top: high, from: card.meterFrom } as const;
  return [{ ...of, ...cannot, code: 'meter-cannot-show', severity: 'warning' }];
}

function words(finding: MeterCannotShow): FindingWords {
  return {
    finding: whatItReads(finding),
    why: `A reading shows the low limit only where it stays above it by more than the meter’s own error, with a chance of ${percentText(limits.shownChance.value)}.`,
  };
}

function whatItReads({ reason, low, top, needed, from }: MeterCannotShow): string {
  switch (reason) {
    case 'free-test':
      return 'The card says that the meter reads free copper: it reads complexed copper low, use a test for total copper.';
    case 'limit-unread':
      return `The meter reads from ${levelText(from ?? 0)}, above the low limit ${levelText(low)}: use a finer one.`;
    case 'too-coarse':
      return needed === null
        ? `This meter cannot show the low limit ${levelText(low)} within its range: use a finer one.`
        : `To show the low limit ${levelText(low)} this meter would have to read ${levelText(needed)}, above the top ${levelText(top)}: use a finer one.`;
  }
}

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
