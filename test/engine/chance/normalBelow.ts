// Taken once: under the test runner every look at a global is slow.
const { PI, exp, max, min, sqrt } = Math;

/** Chance that a standard normal is below z, by Simpson's rule on the density: slow, and plain to see. */
export function normalBelow(z: number): number {
  const end = max(-9, min(9, z));
  const strips = 200;
  const width = end / strips;
  let sum = 0;
  for (let strip = 0; strip <= strips; strip++) {
    const weight = strip === 0 || strip === strips ? 1 : strip % 2 === 1 ? 4 : 2;
    sum += weight * density(strip * width);
  }
  return 0.5 + (sum * width) / 3;
}

function density(z: number): number {
  return exp(-0.5 * z * z) / sqrt(2 * PI);
}
