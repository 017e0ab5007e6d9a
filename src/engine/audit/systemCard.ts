import type { Card } from '../log/card.js';

/** The card of one of the systems of a shared log. */
export interface SystemCard {
  readonly name: string;
  readonly card: Card;
}
