import * as limits from '../limits/limits.js';

/** A step short of binary noise. */
const noise = 1e-9;

/** A volume of solution that a syringe can give, rounded down. [mL] */
export function syringeDown(millilitres: number, smallest: number = limits.syringeStep.value): number {
  return tidy(Math.floor(millilitres / smallest + noise) * smallest);
}

/** Water that a bucket can measure, in steps of half a litre. [L] */
export function waterIn(litres: number, way: 'up' | 'down'): number {
  const steps = litres / limits.changeStep.value;
  return tidy((way === 'up' ? Math.ceil(steps - noise) : Math.floor(steps + noise)) * limits.changeStep.value);
}

function tidy(x: number): number {
  return Number(x.toFixed(6));
}
