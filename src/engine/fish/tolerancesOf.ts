import { tolerance, type Tolerance } from './tolerance.js';

/** A name as it was given, and what the list says of it. */
export interface FishTolerance {
  readonly name: string;
  readonly tolerance: Tolerance;
}

/** What the list says of every name, in the order given. */
export function tolerancesOf(names: readonly string[]): readonly FishTolerance[] {
  // A column of livestock repeats its names; each is looked up once.
  const known = new Map<string, Tolerance>();
  return names.map((name) => {
    const found = known.get(name) ?? tolerance(name);
    known.set(name, found);
    return { name, tolerance: found };
  });
}
