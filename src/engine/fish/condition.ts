/** What a fish may have, as TREATMENTFOR knows it. */
export type ConditionKey =
  | 'white-spot'
  | 'velvet'
  | 'trichodina'
  | 'brooklynella'
  | 'uronema'
  | 'flukes'
  | 'black-spot'
  | 'bacterial'
  | 'worms'
  | 'lymphocystis'
  | 'unknown';

export interface Condition {
  readonly key: ConditionKey;
  /** The word to write for it. */
  readonly name: string;
  readonly also: readonly string[];
}
