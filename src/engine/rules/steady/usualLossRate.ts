import { copperForms } from '../../dose/forms.js';
import type { Card } from '../../log/card.js';

/** k of half the loss that is usual for the card's form; 0 where it names none. [1/day] */
export function usualLossRate({ form }: Card): number {
  return form === null ? 0 : -Math.log1p(-copperForms[form].usualLossPerDay) / 2;
}
