import type { ReferenceKey } from '../references/references.js';
import type { ConditionKey } from './condition.js';

/** What copper does to a condition. */
export type CopperEffect =
  | 'stops-reinfection'
  | 'not-treated'
  | 'not-reached'
  | 'disputed'
  | 'only-some'
  /** The line says nothing of copper. */
  | 'other';

export type Remedy =
  | 'copper'
  | 'copper-in-public-aquaria'
  | 'copper-alone-not-enough'
  | 'no-copper-for-this-fish'
  | 'fallow-display'
  | 'formalin'
  | 'metronidazole-with-copper'
  | 'metronidazole-perhaps'
  | 'praziquantel-bath'
  | 'praziquantel-again'
  | 'praziquantel'
  | 'praziquantel-with-copper'
  | 'antibiotic'
  | 'praziquantel-in-food'
  | 'fenbendazole-in-food'
  | 'water-tests'
  | 'good-water'
  | 'microscope'
  | 'nothing'
  | 'chloroquine'
  | 'veterinarian';

export type Timing =
  | 'thirty-days'
  | 'thirty-days-of-white-spot'
  | 'twenty-one-days'
  | 'within-a-day'
  | 'if-velvet-likely'
  | 'intolerant-fish'
  | 'fallow-days'
  | 'at-once'
  | 'beside-copper'
  | 'early'
  | 'before-or-after-copper'
  | 'bath-fades'
  | 'second-bath'
  | 'whatever-the-hold'
  | 'emergency'
  | 'after-culture'
  | 'with-food'
  | 'instead-of-copper'
  | 'first'
  | 'first-ammonia'
  | 'before-any-dose'
  | 'meanwhile'
  | 'always';

/** One line of advice on a condition; src/engine/text/treatmentTable.ts puts it into words. */
export interface Treatment {
  readonly condition: ConditionKey;
  readonly copper: CopperEffect;
  readonly give: Remedy;
  readonly when: Timing;
  readonly sources: readonly ReferenceKey[];
  /** Worked out from what the source says, not printed in it. */
  readonly derived?: true;
}
