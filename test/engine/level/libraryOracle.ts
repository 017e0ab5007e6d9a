import { KalmanFilter, State } from 'kalman-filter';
import type { Line } from './eventsOf.js';
import type { Tank } from './jointNormal.js';

interface OneStep {
  readonly transition: number;
  readonly constant: number;
  readonly variance: number;
}

/** What each line does to a level, reckoned here on its own. Nothing evaporates. */
function oneStep(lines: readonly Line[], line: number, { volume, strength, rate, drift }: Tank): OneStep {
  const [when, kind, amount, detail] = lines[line]!;
  const days = line === 0 ? 0 : when - lines[line - 1]![0];
  const left = Math.exp(-rate * days);
  const variance = drift * drift * (rate === 0 ? days : (1 - left * left) / (2 * rate));
  if (kind === 'dose') return { transition: left, constant: (amount * strength) / volume, variance };
  if (kind !== 'change' || detail === undefined) return { transition: left, constant: 0, variance };
  const kept = 1 - amount / volume;
  return { transition: kept * left, constant: (1 - kept) * detail, variance: kept * kept * variance };
}

export interface Filtered {
  /** Before each line's own reading; NaN up to the first reading. */
  readonly ahead: number[];
  readonly aheadVariance: number[];
  readonly logLikelihood: number;
}

/** The general-purpose filter run over a log whose first line is a reading, which starts it. */
export function libraryFilter(lines: readonly Line[], tank: Tank): Filtered {
  const ahead = [NaN];
  const aheadVariance = [NaN];
  let logLikelihood = 0;
  runLibrary(lines, tank, -1, (line, predicted) => {
    const [mean, variance] = [predicted.mean[0]![0]!, predicted.covariance[0]![0]!];
    ahead.push(mean);
    aheadVariance.push(variance);
    const [, kind, reading] = lines[line]!;
    if (kind !== 'reading') return;
    const spread = variance + tank.sigma(reading) ** 2;
    logLikelihood -= 0.5 * (Math.log(spread) + (reading - mean) ** 2 / spread);
  });
  return { ahead, aheadVariance, logLikelihood };
}

/** The level after one line given the whole log: a second state that holds still from that line on is filtered along. */
export function librarySmoothed(lines: readonly Line[], tank: Tank, line: number): { mean: number; spread: number } {
  const last = runLibrary(lines, tank, line, () => undefined);
  return { mean: last.mean[1]![0]!, spread: Math.sqrt(last.covariance[1]![1]!) };
}

/** A hair of variance keeps rounding from making a covariance larger than its variances allow, which the filter refuses. */
const hair = 1e-15;

function runLibrary(
  lines: readonly Line[],
  tank: Tank,
  held: number,
  see: (line: number, predicted: State) => void,
): State {
  const first = lines[0]![2];
  const start = tank.sigma(first) ** 2;
  const isHeldFirst = held <= 0;
  const init = {
    mean: [[first], [isHeldFirst ? first : 0]],
    covariance: isHeldFirst
      ? [
          [start, start],
          [start, start + hair],
        ]
      : [
          [start, 0],
          [0, hair],
        ],
    index: 0,
  };
  const filter = new KalmanFilter({
    observation: {
      dimension: 1,
      stateProjection: () => [[1, 0]],
      covariance: ({ index }) => [[tank.sigma(lines[index]![2]) ** 2]],
    },
    dynamic: {
      dimension: 2,
      init,
      transition: ({ index }) => {
        const { transition } = oneStep(lines, index, tank);
        return index === held
          ? [
              [transition, 0],
              [transition, 0],
            ]
          : [
              [transition, 0],
              [0, 1],
            ];
      },
      covariance: ({ index }) => {
        const { variance } = oneStep(lines, index, tank);
        return index === held
          ? [
              [variance, variance],
              [variance, variance + hair],
            ]
          : [
              [variance, 0],
              [0, 0],
            ];
      },
      constant: ({ index }) => {
        const { constant } = oneStep(lines, index, tank);
        return [[constant], [index === held ? constant : 0]];
      },
    },
  });
  let state = new State(init);
  for (let line = 1; line < lines.length; line++) {
    const predicted = filter.predict({ previousCorrected: state, index: line });
    see(line, predicted);
    const [, kind, reading] = lines[line]!;
    state = kind === 'reading' ? filter.correct({ predicted, observation: [reading] }) : predicted;
  }
  return state;
}
