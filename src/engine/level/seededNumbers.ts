/** A stream of random numbers that a seed fixes. */
export interface SeededNumbers {
  /** From 0, below 1. */
  readonly uniform: () => number;
  /** Mean 0, standard deviation 1. */
  readonly normal: () => number;
}

/**
 * Random numbers that are the same for the same seed, here and everywhere: a simulated tank can be told by its seed.
 *
 * Definition: the 32-bit generator known as mulberry32, and normals by Box and Muller (both from memory).
 *
 * @param seed a whole number
 * @returns the stream
 */
export function seededNumbers(seed: number): SeededNumbers {
  let state = seed | 0;
  const uniform = () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  // The logarithm must not see 0.
  const normal = () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
  return { uniform, normal };
}
