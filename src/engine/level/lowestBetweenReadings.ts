import { eventKinds, type WaterEvents } from '../log/waterEvents.js';
import { levelAfter } from './levelAfter.js';
import type { LevelModel } from './levelModel.js';

/** The lowest level between each reading and the next, a column each with an entry an interval; NaN: nothing is known. */
export interface LowestBetween {
  readonly count: number;
  /** Index of the event that is the interval's first reading, and of its last. */
  readonly from: Uint32Array;
  readonly to: Uint32Array;
  /** Lowest upper end of the 95 % band [mg/L], when [serial day], and the event before or at it. */
  readonly high: Float64Array;
  readonly highWhen: Float64Array;
  readonly highEvent: Uint32Array;
  /** Lowest expected level [mg/L], and when [serial day]. */
  readonly expected: Float64Array;
  readonly expectedWhen: Float64Array;
}

/** A stretch without any event longer than this [days] is looked at in its middle too. */
const longStretch = 1;

/**
 * Where the level was lowest between two readings, as the whole log explains it.
 *
 * The lowest of the levels right after each event, just before the next one, and half way between two events more than a
 * day apart; both readings' own levels are among them.
 *
 * Basis: bands of `levelModel`. Of equal levels the earliest counts.
 * Validity: readings of every sort bound an interval, `>x` too. Between two events the expected level may sag by a share
 *   of about (k·days)² ÷ 8 where the loss is made up for by drift; its band is wider there than at the ends.
 * Definition: a minimum.
 *
 * @param events of one system
 * @param model of the same events
 * @returns a column each
 */
export function lowestBetweenReadings(events: WaterEvents, model: LevelModel): LowestBetween {
  const { kind, when } = events;
  const { expected, high, expectedBefore, highBefore } = model;
  let tests = 0;
  for (let index = 0; index < events.count; index++) if (kind[index] === eventKinds.reading) tests++;
  const lowest = noLevels(Math.max(0, tests - 1));
  let interval = -1;
  for (let index = 0; index < events.count; index++) {
    const time = when[index] ?? NaN;
    const isOpen = interval >= 0 && interval < lowest.count;
    if (isOpen) see(lowest, interval, { index, time, expected: expectedBefore[index], high: highBefore[index] });
    if (kind[index] === eventKinds.reading) {
      if (interval >= 0) lowest.to[interval] = index;
      interval++;
      if (interval < lowest.count) lowest.from[interval] = index;
    }
    if (interval < 0 || interval >= lowest.count) continue;
    see(lowest, interval, { index, time, expected: expected[index], high: high[index] });
    const stretch = (when[index + 1] ?? NaN) - time;
    if (stretch > longStretch) {
      const middle = levelAfter(model.path, index, stretch / 2);
      see(lowest, interval, { index, time: time + stretch / 2, expected: middle.expected, high: middle.high });
    }
  }
  return lowest;
}

function noLevels(count: number): LowestBetween {
  const column = () => new Float64Array(count).fill(NaN);
  const indices = () => new Uint32Array(count);
  return {
    count,
    from: indices(),
    to: indices(),
    high: column(),
    highWhen: column(),
    highEvent: indices(),
    expected: column(),
    expectedWhen: column(),
  };
}

interface Seen {
  readonly index: number;
  readonly time: number;
  readonly expected: number | undefined;
  readonly high: number | undefined;
}

function see(lowest: LowestBetween, interval: number, { index, time, expected = NaN, high = NaN }: Seen): void {
  if (isLower(expected, lowest.expected[interval])) {
    lowest.expected[interval] = expected;
    lowest.expectedWhen[interval] = time;
  }
  if (isLower(high, lowest.high[interval])) {
    lowest.high[interval] = high;
    lowest.highWhen[interval] = time;
    lowest.highEvent[interval] = index;
  }
}

/** The first level known is lower than none. */
function isLower(level: number, than: number | undefined): boolean {
  return level < (than ?? NaN) || (Number.isNaN(than) && !Number.isNaN(level));
}
