import type { FormName } from '../dose/forms.js';
import type { eventKinds, WaterEvents } from '../log/waterEvents.js';
import type {
  CopperMgPerLitre,
  CopperMgPerMl,
  CopperPerRootDay,
  Days,
  Fraction,
  Hours,
  Litres,
  SerialDay,
} from '../units/quantity.js';

/** A treatment to be simulated. */
export interface SimulatedTreatment {
  readonly seed: number;
  /** The first test; later days keep its time of day. */
  readonly start: SerialDay;
  /** How long the log is, raising included. */
  readonly days: Days;
  readonly volume: Litres;
  readonly strength: CopperMgPerMl;
  readonly form: FormName;
  /** The form's own where it is not given. */
  readonly aim?: CopperMgPerLitre;
  readonly raisingDays: Days;
  /** Spread over 12 hours, and each moved by up to so many hours. */
  readonly testsADay: { readonly raising: number; readonly holding: number };
  readonly testJitter: Hours;
  readonly meter: { readonly accuracy: CopperMgPerLitre; readonly percent: Fraction };
  readonly lossPerDay: Fraction;
  readonly drift: CopperPerRootDay;
  /** Changes in the hold; replacement null: brought to the tank's level first. null: none. */
  readonly change: {
    readonly everyDays: Days;
    readonly share: Fraction;
    readonly replacement: CopperMgPerLitre | null;
  } | null;
  /** Water that evaporates and is topped off. [L/day] */
  readonly topOffPerDay: Litres;
}

/** A line of a log, with what a keeper never sees. */
export interface SimulatedRow {
  readonly when: SerialDay;
  readonly kind: keyof typeof eventKinds;
  /** As in `WaterEvents`. */
  readonly amount: number;
  readonly detail: number;
  /** In the tank, right after it. */
  readonly trueLevel: CopperMgPerLitre;
}

export interface SimulatedTank {
  readonly rows: readonly SimulatedRow[];
  /** The same rows; row n is the n-th of a range whose first row is the heading. */
  readonly events: WaterEvents;
  readonly trueLevel: Float64Array;
}
