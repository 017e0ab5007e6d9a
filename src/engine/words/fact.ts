/** What a text of a log can say. */
export type FactKind =
  | 'fish in'
  | 'fish out'
  | 'deaths'
  | 'dead on arrival'
  | 'invertebrates'
  | 'ammonia'
  | 'medicines'
  | 'dip, bath or bucket'
  | 'absorbers'
  | 'ammonia binder'
  | 'reducing dechlorinator'
  | 'disease'
  | 'signs: disease'
  | 'signs: not copper'
  | 'signs: intolerance'
  | 'signs: other'
  | 'all fish at the surface'
  | 'power or pump off'
  | 'broken heater'
  | 'leak'
  | 'wrong bottle'
  | 'dosed twice'
  | 'missed dose'
  | 'overdose'
  | 'copper in the top-off'
  | 'gear or water from another tank'
  | 'UV and ozone'
  | 'a dosing pump'
  | 'copper taken out'
  | 'hyposalinity'
  | 'new kit or meter';

/** now: here, and it stands. ended: over, or taken out. denied: said not to be. planned: meant, not done. */
export type Polarity = 'now' | 'ended' | 'denied' | 'planned' | 'hearsay' | 'other tank';

export interface Fact {
  readonly kind: FactKind;
  readonly polarity: Polarity;
  /** How many, where the text says so; null: it does not. */
  readonly count: number | null;
  /** The words that say it, as the keeper wrote them. */
  readonly name: string;
  /** Where those words stand in the text. */
  readonly from: number;
  readonly to: number;
}

/** The column a text stands in decides what its bare names mean. */
export type TextColumn = 'note' | 'signs' | 'fish in' | 'fish out' | 'dead';

export interface TextContext {
  readonly column: TextColumn;
  /** Names of the log's own tank: any other tank that is named is another one. */
  readonly ownNames: readonly string[];
}
