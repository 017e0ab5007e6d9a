import { RangeReferenceObject, type ArrayValueObject } from '@univerjs/engine-formula';
import { CellValueType, type ICellData, type Nullable } from '@univerjs/core';
import { isCellError, type CellValue } from '../cell/cellValue.js';
import { Area, type World } from '../evaluate/value.js';
import { arrayObject } from './arrayObject.js';

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
    return arrayObject(this.world.rows(this.areaNow()));
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
