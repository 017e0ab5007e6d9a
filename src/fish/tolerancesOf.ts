import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import { shown } from '../units/shown.js';
import { fishNames } from './fishNames.js';
import { tolerance, type Tolerance } from './tolerance.js';

/** The text of a cell and the row it stands in. */
export interface FishCell {
  readonly text: string;
  readonly row: number;
}

/** A name as it was given, on one line, and what the list says of it. */
export interface FishTolerance {
  readonly name: string;
  readonly tolerance: Tolerance;
}

/** What the list says of every name in the cells, in the order given. A number in place of a name is refused with its row. */
export function tolerancesOf(cells: readonly FishCell[]): Result<readonly FishTolerance[], Problem> {
  const known = new Map<string, Tolerance>();
  const answers: FishTolerance[] = [];
  for (const { text, row } of cells) {
    for (const name of fishNames(text)) {
      if (isNumber(name)) return refuse({ code: 'not-a-value', at: { row }, given: shown(name), kind: 'fish' });
      const found = known.get(name) ?? tolerance(name);
      known.set(name, found);
      answers.push({ name, tolerance: found });
    }
  }
  return ok(answers);
}

function isNumber(name: string): boolean {
  return Number.isFinite(Number(name)) || (/\p{N}/u.test(name) && !/\p{L}/u.test(name));
}
