import type { Card } from '../log/card.js';
import { meterAccuracyOf } from './treatmentOf.js';

/** The meter's error at a level, ± at 95 %. [mg/L] */
export function meterErrorAt(card: Card, level: number): number {
  return meterAccuracyOf(card) + card.meterPercent * level;
}
