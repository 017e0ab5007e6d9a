// Taken once: under the test runner every look at a global is slow.
const { PI, cos, log, sqrt } = Math;

/** A seeded stream of random numbers, so that a test draws the same tanks every time (xorshift, 32 bits). */
export class RandomNumbers {
  private state: number;

  constructor(seed: number) {
    this.state = seed | 0 || 1;
    for (let warm = 0; warm < 20; warm++) this.uniform();
  }

  /** Above 0, below 1. */
  uniform(): number {
    let x = this.state;
    x ^= x << 13;
    x ^= x >>> 17;
    x ^= x << 5;
    this.state = x | 0;
    return ((x >>> 0) + 0.5) / 2 ** 32;
  }

  between(from: number, to: number): number {
    return from + (to - from) * this.uniform();
  }

  /** Standard normal, by Box and Muller. */
  normal(): number {
    return sqrt(-2 * log(this.uniform())) * cos(2 * PI * this.uniform());
  }
}
