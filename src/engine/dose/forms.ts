import * as limits from '../limits/limits.js';
import type { ReferenceKey } from '../references/references.js';
import { copperMgPerLitre, fraction, type CopperMgPerLitre, type Fraction } from '../units/quantity.js';

/** The levels between which a hold counts, both inside. */
export interface LevelSpan {
  readonly low: CopperMgPerLitre;
  readonly high: CopperMgPerLitre;
}

interface CopperForm {
  /** Words a person may write for it; the word copper may stand beside them. */
  readonly words: readonly string[];
  readonly band: LevelSpan;
  /** The band without the allowance at either end; the band itself where it has none. */
  readonly inner: LevelSpan;
  readonly aim: CopperMgPerLitre;
  /** Most of the level that is usually lost in a day. */
  readonly usualLossPerDay: Fraction;
  /** Source of the band. */
  readonly source: ReferenceKey;
}

export type FormName = 'sulfate' | 'amine' | 'chelated';

export const formNames = ['sulfate', 'amine', 'chelated'] as const satisfies readonly FormName[];

/** Bands belong to a chemical form: never apply one form's band to another. Levels are mg/L as Cu. */
export const copperForms: Readonly<Record<FormName, CopperForm>> = {
  sulfate: {
    words: ['sulfate', 'sulphate', 'citrate', 'citrated'],
    band: span(0.18, 0.21), // [ZecHadfieldHungerford2021, abstract], seen; others print 0.15–0.20 [FishHealthPage], seen
    inner: span(0.18, 0.21),
    aim: copperMgPerLitre(0.2), // [Practice]
    usualLossPerDay: fraction(limits.lossSulfate.value),
    source: 'ZecHadfieldHungerford2021',
  },
  amine: {
    words: ['amine'],
    band: span(0.45, 0.55), // [Practice], 0.50 ± 0.05
    inner: span(0.45, 0.55),
    aim: copperMgPerLitre(0.5), // [Practice]
    usualLossPerDay: fraction(limits.lossAmine.value),
    source: 'Practice',
  },
  chelated: {
    words: ['chelated'],
    band: span(1.95, 2.55), // [Practice], 2.0–2.5 with an allowance of 0.05 at either end
    inner: span(2, 2.5), // [Practice]
    aim: copperMgPerLitre(2.25), // [Practice]
    usualLossPerDay: fraction(limits.lossChelated.value),
    source: 'Practice',
  },
};

function span(low: number, high: number): LevelSpan {
  return { low: copperMgPerLitre(low), high: copperMgPerLitre(high) };
}
