import { ArrayValueObject } from '@univerjs/engine-formula';
import { valueObject } from './valueObject.js';
import type { Grid } from '../evaluate/value.js';

/** Grids read again and again, such as a whole log, are turned once. */
const turned = new WeakMap<Grid, ArrayValueObject>();
let count = 0;

/** A grid as the library takes it. */
export function arrayObject(grid: Grid): ArrayValueObject {
  const known = turned.get(grid);
  if (known !== undefined) return known;
  count += 1;
  const made = ArrayValueObject.create({
    calculateValueList: grid.map((row) => row.map((value) => valueObject(value))),
    rowCount: grid.length,
    columnCount: grid[0]?.length ?? 0,
    // The library remembers what it looked up by sheet and place: no two grids have both in common.
    unitId: 'book',
    sheetId: String(count),
    row: 0,
    column: 0,
  });
  turned.set(grid, made);
  return made;
}
