import type { FormName } from '../dose/forms.js';
import type { Pace } from '../dose/pacePlan.js';
import type { CopperMgPerLitre, Days, SerialDay } from '../units/quantity.js';
import type { WarnedMedicine } from './medicineOf.js';

/** What a plan is made from. */
export interface PlanTerms {
  /** The first dose. */
  readonly start: SerialDay;
  readonly form: FormName;
  readonly days: Days;
  readonly pace: Pace;
  /** Other medicines, as the keeper names them. */
  readonly medicines: readonly string[];
}

/** One thing to do, with what its sentence needs. */
export type PlanAction =
  | { readonly code: 'screen' | 'measure' | 'baseline' | 'handle' | 'keep-out' }
  | { readonly code: 'short-course'; readonly days: number }
  | {
      readonly code: 'supplies';
      readonly pace: Pace;
      readonly tests: number;
      readonly testsAfter: number;
      readonly aim: CopperMgPerLitre;
      readonly lossPerDay: number;
    }
  | { readonly code: 'warned-medicine'; readonly medicine: WarnedMedicine; readonly given: string }
  | { readonly code: 'unknown-medicine'; readonly given: string }
  | { readonly code: 'metronidazole' }
  | { readonly code: 'raise'; readonly pace: Pace; readonly days: number; readonly aim: CopperMgPerLitre }
  | { readonly code: 'test-raising'; readonly pace: Pace }
  | { readonly code: 'test-decides'; readonly level: CopperMgPerLitre }
  | { readonly code: 'hold-begins' | 'test-holding'; readonly low: CopperMgPerLitre; readonly aim: CopperMgPerLitre }
  | { readonly code: 'watch' | 'prepare-observation' | 'transfer' | 'prepare-removal' }
  | { readonly code: 'finish'; readonly days: number; readonly low: CopperMgPerLitre }
  | { readonly code: 'copper-out' | 'sentinel' }
  | { readonly code: 'test-after-change'; readonly hours: number }
  | { readonly code: 'praziquantel' | 'second-praziquantel'; readonly from: number; readonly until: number }
  | {
      readonly code: 'observe-earliest' | 'observe-advised';
      readonly form: FormName;
      readonly days: number;
      readonly afterPraziquantel: boolean;
    }
  | { readonly code: 'display-fallow'; readonly days: number };

export type PlanStep = PlanAction & {
  readonly when: SerialDay;
  /** 1, 2, …; null outside the hold. */
  readonly holdDay: number | null;
};
