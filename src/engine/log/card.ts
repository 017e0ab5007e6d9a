import type { FormName } from '../dose/forms.js';
import type { Pace } from '../dose/pacePlan.js';
import {
  type Celsius,
  type CopperMgPerLitre,
  type CopperMgPerMl,
  type Days,
  type Fraction,
  type Litres,
  type Millilitres,
  type PracticalSalinity,
  type SerialDay,
  hoursPerDay,
} from '../units/quantity.js';
import * as limits from '../limits/limits.js';

/** Limits of a band, and for a form with an allowance the limits without it; Infinity: no top. */
export interface CardBand {
  readonly low: number;
  readonly high: number;
  readonly inner?: { readonly low: number; readonly high: number };
}

/** What a keeper says once about a system and its treatment. null: not said. */
export interface Card {
  readonly volume: Litres;
  readonly form: FormName | null;
  readonly band: CardBand;
  readonly strength: CopperMgPerMl | null;
  /** The level to keep: as said, else the form's, else the middle of the band. */
  readonly aim: CopperMgPerLitre;
  readonly meterAccuracy: CopperMgPerLitre | null;
  readonly meterPercent: Fraction;
  /** The lowest level the meter reads. */
  readonly meterFrom: CopperMgPerLitre | null;
  readonly reads: 'free' | 'total' | null;
  readonly days: Days;
  readonly pace: Pace;
  /** Infinity: switched off. */
  readonly longestGap: Days;
  readonly fish: readonly string[];
  readonly start: SerialDay | null;
  readonly arrived: SerialDay | null;
  readonly temperature: Celsius | null;
  readonly salinity: PracticalSalinity | null;
  readonly pH: number | null;
  readonly disease: string;
  readonly confirm: 1 | 2;
  readonly newcomers: 'count on' | 'restart';
  readonly gallon: 'US' | 'imperial';
  /** The highest level the meter reads. */
  readonly meterTo: CopperMgPerLitre | null;
  /** The smallest volume that can be measured out. */
  readonly smallest: Millilitres | null;
  readonly dosesADay: number | null;
  /** When the fish came from another treated system. */
  readonly movedIn: SerialDay | null;
  /** Fish that stay in copper although the list of groups speaks against it: the keeper's own word. */
  readonly acceptCopperFor: readonly string[];
  readonly sharesWaterWith: readonly string[];
  /** What a bottle of solution holds. */
  readonly bottle: Millilitres | null;
  readonly bottlePrice: number | null;
  readonly testsLeft: number | null;
  readonly testPrice: number | null;
}

/** Unless the keeper says otherwise: longer than a long weekend. [days] */
export const usualLongestGapDays = limits.longestGap.value / hoursPerDay;

/** Unless the keeper says otherwise; Colorni (1985) gives 28 + 2. [days] */
export const usualHoldDays = limits.holdDays.value;
