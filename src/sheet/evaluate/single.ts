import { intersection } from './intersection.js';
import { Area, isGrid, type Scope, type Value } from './value.js';

/** One value: of a range the cell beside the formula, of an array the first. */
export function single(of: Value, { place }: Scope): Value {
  if (of instanceof Area) return intersection(of, place);
  return isGrid(of) ? (of[0]?.[0] ?? null) : of;
}
