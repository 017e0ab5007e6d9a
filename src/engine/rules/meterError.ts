import * as limits from '../limits/limits.js';
import type { Card } from '../log/card.js';

/** The meter's accuracy; where the card does not say it, a share of the aim, and not less than the least. */
export function meterAccuracyOf(card: Card): number {
  return card.meterAccuracy ?? Math.max(limits.meterLeast.value, card.aim / limits.meterOfAim.value);
}

/** The meter's error at a level, ± at 95 %. [mg/L] */
export function meterErrorAt(card: Card, level: number): number {
  return meterAccuracyOf(card) + card.meterPercent * level;
}
