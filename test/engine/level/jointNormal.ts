import { eventKinds } from '../../../src/engine/log/waterEvents.js';
import type { Line } from './eventsOf.js';

export interface Tank {
  readonly volume: number;
  readonly strength: number;
  readonly sigma: (reading: number) => number;
  readonly rate: number;
  readonly drift: number;
}

export interface Posterior {
  /** Level right after each line: mean and standard deviation. */
  readonly mean: number[];
  readonly spread: number[];
}

/**
 * The level after each line by writing the joint normal down whole, without any recursion of a filter: the unknowns are
 * the level at the start and one disturbance a line; every level is a row of known numbers times the unknowns plus a
 * constant; the readings give normal equations, which are inverted. Nothing evaporates here.
 */
export function jointNormal(lines: readonly Line[], tank: Tank): Posterior {
  const { rows, constants, variances } = linearLevels(lines, tank);
  const size = lines.length + 1;
  const precision = Array.from({ length: size }, (_, i) =>
    Array.from({ length: size }, (_, j) => (i === j && i > 0 ? 1 / (variances[i - 1] ?? NaN) : 0)),
  );
  const pull = Array.from({ length: size }, () => 0);
  lines.forEach(([, kind, reading], line) => {
    if (eventKinds[kind] !== eventKinds.reading) return;
    const weight = 1 / tank.sigma(reading) ** 2;
    const row = rows[line]!;
    for (let i = 0; i < size; i++) {
      pull[i]! += weight * row[i]! * (reading - constants[line]!);
      for (let j = 0; j < size; j++) precision[i]![j]! += weight * row[i]! * row[j]!;
    }
  });
  const covariance = inverse(precision);
  const unknown = covariance.map((row) => dot(row, pull));
  return {
    mean: rows.map((row, line) => dot(row, unknown) + constants[line]!),
    spread: rows.map((row) =>
      Math.sqrt(
        dot(
          row,
          covariance.map((column) => dot(column, row)),
        ),
      ),
    ),
  };
}

function linearLevels(lines: readonly Line[], { volume, strength, rate, drift }: Tank) {
  let row = [1, ...lines.map(() => 0)];
  let constant = 0;
  const [rows, constants, variances]: [number[][], number[], number[]] = [[], [], []];
  lines.forEach(([when, kind, amount, detail], line) => {
    const days = line === 0 ? 0 : when - lines[line - 1]![0];
    const left = Math.exp(-rate * days);
    // A disturbance that is none would have no precision; 1e-13 mg/L is none to a meter.
    const wandered = rate === 0 ? days : (1 - left * left) / (2 * rate);
    variances.push(Math.max(drift * drift * wandered, 1e-26));
    row = row.map((x, i) => (i === line + 1 ? 1 : left * x));
    constant *= left;
    if (kind === 'dose') constant += (amount * strength) / volume;
    if (kind === 'change' && detail !== undefined) {
      const share = amount / volume;
      row = row.map((x) => x * (1 - share));
      constant = constant * (1 - share) + share * detail;
    }
    rows.push(row);
    constants.push(constant);
  });
  return { rows, constants, variances };
}

function dot(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, x, i) => sum + x * b[i]!, 0);
}

/** Gauss and Jordan, largest pivot first. */
function inverse(matrix: readonly (readonly number[])[]): number[][] {
  const size = matrix.length;
  const work = matrix.map((row, i) => [...row, ...row.map((_, j) => (i === j ? 1 : 0))]);
  for (let column = 0; column < size; column++) {
    let best = column;
    for (let r = column; r < size; r++) {
      if (Math.abs(work[r]![column]!) > Math.abs(work[best]![column]!)) best = r;
    }
    [work[column], work[best]] = [work[best]!, work[column]!];
    const pivot = work[column]![column]!;
    work[column] = work[column]!.map((x) => x / pivot);
    work.forEach((row, r) => {
      const factor = row[column]!;
      if (r !== column && factor !== 0) work[r] = row.map((x, j) => x - factor * work[column]![j]!);
    });
  }
  return work.map((row) => row.slice(size));
}
