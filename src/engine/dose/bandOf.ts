import { copperForms, type FormName, type LevelSpan } from './forms.js';

/**
 * Levels between which a hold of a form counts, the allowance included.
 *
 * Basis: mg/L as Cu, measured by a test for that form.
 * Validity: that form alone.
 * Differs from the source: others print 0.15–0.20 for sulfate [FishHealthPage].
 * Source: sulfate [ZecHadfieldHungerford2021, abstract]; amine and chelated [Practice].
 *
 * @param form name of the form
 * @returns low and high, both inside [mg/L]
 * @example bandOf('chelated').low // = 1.95
 */
export function bandOf(form: FormName): LevelSpan {
  return copperForms[form].band;
}
