import { seededNumbers } from '../../../src/engine/level/seededNumbers.js';
import type { Line } from './eventsOf.js';

/** A log of a first reading and then anything, with no water evaporating; readings near what the events make of the level. */
export function randomLog(seed: number, length: number): Line[] {
  const { uniform, normal } = seededNumbers(seed);
  let when = 46082 + uniform();
  let level = 1 + uniform();
  const lines: Line[] = [[when, 'reading', level]];
  while (lines.length < length) {
    when += uniform() < 0.2 ? 0 : 1.5 * uniform() ** 2;
    const what = uniform();
    if (what < 0.5) lines.push([when, 'reading', Math.max(0, level + 0.05 * normal())]);
    else if (what < 0.75) {
      lines.push([when, 'dose', 5 * uniform()]);
      level += (lines.at(-1)![2] * 10) / 200;
    } else if (what < 0.9) {
      const replacement = uniform() < 0.5 ? 0 : 2 * uniform();
      lines.push([when, 'change', 60 * uniform(), replacement]);
      const share = lines.at(-1)![2] / 200;
      level = level * (1 - share) + share * replacement;
    } else lines.push([when, 'change', 60 * uniform()]);
  }
  return lines;
}
