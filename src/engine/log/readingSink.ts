/** Takes readings in the order in which they stand in the rows. */
export interface ReadingSink {
  /** A time [serial day], the low end of the level [mg/L], and its row. */
  add(when: number, low: number, row: number): void;
}
