/** What a copper cell says, in mg/L. */
export type Reading =
  /** Nobody tested. */
  | { readonly kind: 'untested' }
  /** Set aside by the keeper: no test here. */
  | { readonly kind: 'void' }
  | Level;

/** The low end decides the hold, the high end the danger. */
export interface Level {
  readonly kind: 'level';
  readonly low: number;
  readonly high: number;
  readonly approximate: boolean;
  /** The number after a `<`, which stands for "somewhere from 0 to here". */
  readonly under?: number;
}
