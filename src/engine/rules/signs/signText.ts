/** What was written about the fish in one row. */
export interface SignText {
  /** [serial day] */
  readonly when: number;
  readonly row: number;
  readonly text: string;
}
