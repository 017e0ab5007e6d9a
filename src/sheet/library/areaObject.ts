import { isCellError, type CellValue } from '../cell/cellValue.js';
import { Area, type Grid, type World } from '../evaluate/value.js';
import { arrayObject } from './valueObject.js';
import { RangeReferenceObject, type ArrayValueObject } from '@univerjs/engine-formula';
import { CellValueType, type ICellData, type Nullable } from '@univerjs/core';

/** An area as the library takes a reference: it reads the cells when it needs them. */
export class AreaObject extends RangeReferenceObject {
  constructor(
    private readonly area: Area,
    private readonly world: World,
  ) {
    const { firstRow, firstColumn, lastRow, lastColumn } = area.range;
    // Whole columns end with the last row in use, whole rows with the last column.
    const read = area.isWhole ? world.rows(area) : undefined;
    super(
      {
        startRow: firstRow,
        startColumn: firstColumn,
        endRow: read === undefined ? lastRow : firstRow + read.length - 1,
        endColumn: read === undefined ? lastColumn : firstColumn + (read[0]?.length ?? 1) - 1,
      },
      area.sheet,
      'book',
    );
  }

  override toArrayValueObject(): ArrayValueObject {
    return readGrid(this.world.rows(this.areaNow()));
  }

  override getCellData(row: number, column: number): Nullable<ICellData> {
    const range = { firstRow: row, lastRow: row, firstColumn: column, lastColumn: column };
    return cellData(this.world.rows(new Area(this.area.sheet, range))[0]?.[0] ?? null);
  }

  /** Functions such as SUMIF give the second range the size of the first. */
  private areaNow(): Area {
    const { startRow, startColumn, endRow, endColumn } = this.getRangePosition();
    const range = { firstRow: startRow, firstColumn: startColumn, lastRow: endRow, lastColumn: endColumn };
    return new Area(this.area.sheet, range);
  }
}

function cellData(value: CellValue): Nullable<ICellData> {
  if (value === null) return null;
  if (isCellError(value)) return { v: value.basicValue };
  if (typeof value === 'number') return { v: value, t: CellValueType.NUMBER };
  if (typeof value === 'boolean') return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  return { v: value, t: CellValueType.STRING };
}

/** Grids read again and again, such as a whole log, are converted once. */
const known = new WeakMap<Grid, ArrayValueObject>();
let count = 0;

/** Cells that a formula reads, as the library takes them. */
export function readGrid(grid: Grid): ArrayValueObject {
  const before = known.get(grid);
  if (before !== undefined) return before;
  count += 1;
  // The library remembers what it looked up by sheet and place: no two grids have both in common.
  const made = arrayObject(grid, { unitId: 'book', sheetId: String(count), row: 0, column: 0 });
  known.set(grid, made);
  return made;
}
