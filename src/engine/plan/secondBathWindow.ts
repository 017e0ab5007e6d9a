import * as limits from '../limits/limits.js';
import { days, type Days } from '../units/quantity.js';

interface BathWindow {
  readonly from: Days;
  readonly until: Days;
}

/**
 * Days after a first praziquantel bath between which the second belongs: most eggs laid before the first have hatched,
 * and no fluke from them lays yet.
 *
 * from = last usual hatching + 1 = 6 + 1, until = first hatching + earliest maturity = 5 + 10
 *
 * Basis: a skin fluke, Neobenedenia girellae, at 25 °C; warmer is faster, cooler slower.
 * Validity: 25 °C; eggs outlive the bath.
 * Differs from the source: the window is derived here, the source prints hatching and maturity.
 * Source: [BondadReantasoEtAl1995, abstract].
 *
 * @returns first and last day of the window
 * @example secondBathWindow().until // = 15
 */
export function secondBathWindow(): BathWindow {
  return {
    from: days(limits.hatchingLast.value + 1),
    until: days(limits.hatchingFirst.value + limits.flukeMaturity.value),
  };
}
