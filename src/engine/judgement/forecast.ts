import { bandSpreads } from '../level/levelSteps.js';
import { wandering } from '../level/wandering.js';
import * as limits from '../limits/limits.js';
import type { Card } from '../log/card.js';
import { meterErrorAt } from '../rules/meterError.js';
import type { BelievedLevel } from './believedLevel.js';

/** A level at a moment, with the ends between which it lies with 95 %. [mg/L] */
interface Forecast {
  readonly expected: number;
  readonly low: number;
  readonly high: number;
}

/** Share of the meter's variance that is the same in every test: no number of tests takes it away. Common practice. */
const repeats = 0.5;

/**
 * The level at a moment not before the last event, by this tank's loss.
 *
 * expected = (level + raised)·e^(−k·t); spread² = variance·e^(−2kt) + drift²·q(t) + (level·t·spread of k)² + the part of
 * the meter's error that is the same in every test
 *
 * @param believed what is believed of the level
 * @param when the moment [serial day]
 * @param raised by a dose given now [mg/L]
 */
export function forecast(believed: BelievedLevel, card: Card, when: number, raised = 0): Forecast {
  const days = Math.max(0, when - believed.at);
  const left = Math.exp(-believed.rate * days);
  const expected = (believed.level + raised) * left;
  const drift = limits.drift.value * card.band.low;
  const same = meterErrorAt(card, expected) / bandSpreads;
  const variance =
    left * left * believed.variance +
    drift * drift * wandering(Math.max(0, believed.rate), days) +
    (expected * days * believed.rateSpread) ** 2 +
    repeats * same * same;
  const half = bandSpreads * Math.sqrt(variance);
  return { expected, low: expected - half, high: expected + half };
}
