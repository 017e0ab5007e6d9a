/** What the rules of the hold find. */
export type HoldFinding = {
  readonly code: 'hold-broken';
  readonly level: number;
  readonly low: number;
  readonly days: number;
};
