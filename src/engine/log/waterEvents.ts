/**
 * What happened to the water of one system, as columns in the order in which it happened: by time, within a row the
 * reading first, then the change, then the dose, unless the row says otherwise.
 */
export interface WaterEvents {
  readonly count: number;
  /** [serial day] */
  readonly when: Float64Array;
  /** One of `eventKinds`. */
  readonly kind: Uint8Array;
  /**
   * reading: the low end [mg/L]; dose: [mL]; change: water replaced [L]; top-off: water added [L];
   * volume: the system's net volume from here on [L].
   */
  readonly amount: Float64Array;
  /**
   * reading: the high end, Infinity where there is none [mg/L]; change: copper of the replacement water, blank
   * (NaN) where it has no level of its own but the tank's [mg/L]; else 0.
   */
  readonly detail: Float64Array;
  /** The n-th row of the range given, headings counted. */
  readonly row: Uint32Array;
}

/** Numbers in a column of bytes. */
export const eventKinds = { reading: 0, change: 1, dose: 2, topOff: 3, volume: 4 } as const;
