import * as limits from '../limits/limits.js';
import { hoursPerDay } from '../units/quantity.js';

/** What counts as a hold. */
export interface HoldTerms {
  /** Low limit of the band. [mg/L] */
  readonly low: number;
  /** A longer stretch between tests restarts the hold; Infinity switches that off. [days] */
  readonly longestGap: number;
  /** How many readings in a row, at different instants, start a hold. */
  readonly confirm: 1 | 2;
  /** Later readings are left out. [serial day] */
  readonly asOf?: number;
  /** When the fish came in: no day before counts. [serial day] */
  readonly arrived?: number;
}

/** How far past the last test a hold is taken to go on. [days] */
export const creditedDays = limits.creditedGap.value / hoursPerDay;

/** A longer stretch between tests is noted. [days] */
export const notedGapDays = limits.notedGap.value / hoursPerDay;
