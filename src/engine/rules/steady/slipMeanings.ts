/** How a number came to be another one. */
type SlipCause =
  /** µg/L written in a column of mg/L, or the other way round. */
  | 'micrograms'
  | 'milligrams'
  /** Written without its decimal point: 225 for 2.25. */
  | 'point lost'
  /** The point a place or two too far to the right or to the left. */
  | 'point moved'
  | 'digits swapped';

/** What a number may have been meant to be. [mg/L] */
export interface SlipMeaning {
  readonly cause: SlipCause;
  readonly meant: number;
}

/**
 * The levels that a written number may stand for: another unit, a point lost or moved, two neighbouring digits swapped.
 *
 * Basis: levels are written to 0.01 mg/L or finer.
 * Definition: the written number × 10ⁿ, and its digits with two neighbours swapped.
 *
 * @param written as read [mg/L]
 * @returns each meaning once, the likelier causes first
 * @example slipMeanings(22.5)[1].meant // = 2.25
 */
export function slipMeanings(written: number): readonly SlipMeaning[] {
  const point = Number.isInteger(written) ? 'point lost' : 'point moved';
  return [
    { cause: 'micrograms', meant: written / 1000 },
    { cause: point, meant: written / 10 },
    { cause: point, meant: written / 100 },
    { cause: 'point moved', meant: written * 10 },
    { cause: 'point moved', meant: written * 100 },
    { cause: 'milligrams', meant: written * 1000 },
    ...swapped(written).map((meant) => ({ cause: 'digits swapped', meant }) as const),
  ];
}

/** Of the digits that are written: of 2.2 there are none to change over. */
function swapped(written: number): readonly number[] {
  const plain = String(written);
  const places = plain.includes('.') ? plain.length - plain.indexOf('.') - 1 : 0;
  if (places > 4) return [];
  const digits = written.toFixed(places).replace('.', '');
  const numbers: number[] = [];
  for (let at = 0; at + 1 < digits.length; at++) {
    const [a, b] = [digits.charAt(at), digits.charAt(at + 1)];
    if (a !== b) numbers.push(Number(digits.slice(0, at) + b + a + digits.slice(at + 2)) / 10 ** places);
  }
  return numbers;
}
