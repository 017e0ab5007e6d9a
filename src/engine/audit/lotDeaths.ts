/** What became of the fish of one lot. */
export interface LotDeaths {
  /** '' where the row names none, in a log that has lots. */
  readonly lot: string;
  /** null: no row and no card says how many came in. */
  readonly cameIn: number | null;
  readonly deadOnArrival: number;
  readonly raising: number;
  readonly hold: number;
  readonly observation: number;
  /** Still there: came in, less those that died or left; null: not known. */
  readonly left: number | null;
  /** Died after arrival, of those that came in alive; null: not known. */
  readonly percentAfterArrival: number | null;
}

/** Fish of a lot, counted row by row. */
export interface LotSums {
  cameIn: number;
  deadOnArrival: number;
  raising: number;
  hold: number;
  observation: number;
  /** Moved or sold. */
  out: number;
  /** Fish left without a number. */
  isOutUnknown: boolean;
}

/**
 * The deaths of a lot with what they leave.
 *
 * Definition: left = came in − all deaths − moved or sold; percent after arrival = 100·deaths after arrival ÷ (came in −
 * dead on arrival).
 *
 * @param lot its name
 * @param sums fish counted
 * @returns the row of the table
 */
export function lotDeaths(lot: string, sums: LotSums): LotDeaths {
  const { cameIn, deadOnArrival, raising, hold, observation, out, isOutUnknown } = sums;
  const died = raising + hold + observation;
  const alive = cameIn - deadOnArrival;
  const left = alive - died - out;
  return {
    lot,
    cameIn: cameIn > 0 ? cameIn : null,
    deadOnArrival,
    raising,
    hold,
    observation,
    left: cameIn === 0 || isOutUnknown || left < 0 ? null : left,
    percentAfterArrival: alive > 0 && died <= alive ? (100 * died) / alive : null,
  };
}
