import { SpreadsheetSkeleton } from '@univerjs/preset-sheets-core';

/**
 * The sheet component cuts off a text that fits into its cell but for the room left at its sides: such a text, too, runs
 * on into the empty cells beside it.
 */
export function mendOverflow(): void {
  const { prototype } = SpreadsheetSkeleton;
  const positionOf = prototype.getOverflowPosition;
  prototype.getOverflowPosition = function (size, across, row, column, count) {
    const { pd } = this.worksheet.getComposedCellStyle(row, column);
    const sides = (pd?.l ?? 0) + (pd?.r ?? 0);
    const wide = size === undefined || size === null ? size : { ...size, width: size.width + sides };
    return positionOf.call(this, wide, across, row, column, count);
  };
}
