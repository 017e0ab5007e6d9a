/** How fish leave a system. */
export type Departure = 'died' | 'dead on arrival' | 'moved' | 'sold' | 'out';

/** What befell some of a group. */
export interface FishEvent {
  readonly how: Departure;
  readonly count: number;
  /** [serial day] */
  readonly when: number;
  readonly row: number;
  /** The log does not say which of several groups it was. */
  readonly unclear: boolean;
}

/** Fish of one kind that came in together. */
export interface RosterFish {
  /** As the keeper wrote it. */
  readonly written: string;
  /** The name in the form in which names are compared. */
  readonly words: readonly string[];
  readonly lot: string;
  /** null: of the card. */
  readonly row: number | null;
  /** null: not said. [serial day] */
  readonly arrived: number | null;
  readonly count: number;
  /** Whether the count was given as a number, or is plainly one fish. */
  readonly exact: boolean;
  readonly doa: number;
  /** How many are still there. */
  remaining: number;
  /** When the last of them left; null: they are there. [serial day] */
  left: number | null;
  readonly events: FishEvent[];
}
