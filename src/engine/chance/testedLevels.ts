/** The tests of a level that wanders between them, one entry an instant. */
export interface TestedLevels {
  /** Rising: no two of one instant. [days] */
  readonly when: Float64Array | readonly number[];
  /** What the meter read. [mg/L] */
  readonly level: Float64Array | readonly number[];
  /** Standard deviation of each reading about the true level, above 0. [mg/L] */
  readonly spread: Float64Array | readonly number[];
  /** The limit that the true level must not go below. [mg/L] */
  readonly low: number;
  /** Standard deviation of what the true level wanders in a day, 0 or more. [mg/L per √day] */
  readonly drift: number;
}
