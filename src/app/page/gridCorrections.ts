import type { Univer } from '@univerjs/core';
import { LexerTreeBuilder, SpreadsheetSkeleton } from '@univerjs/preset-sheets-core';

interface Lexer {
  _squareBracketState: number;
  _resetTemp(): void;
}

/**
 * The sheet component reads a formula while it is typed, and a `[` that is open then stays open for every formula read
 * after: this starts counting brackets again with each formula.
 */
export function countBrackets(univer: Univer): void {
  const lexer = univer.__getInjector().get(LexerTreeBuilder) as unknown as Lexer;
  const reset = lexer._resetTemp.bind(lexer);
  lexer._resetTemp = () => {
    lexer._squareBracketState = 0;
    reset();
  };
}

/**
 * The sheet component cuts off a text that fits into its cell but for the room left at its sides: such a text runs
 * on into the empty cells beside it too.
 */
export function showOverflow(): void {
  const { prototype } = SpreadsheetSkeleton;
  const positionOf = prototype.getOverflowPosition;
  prototype.getOverflowPosition = function (size, across, row, column, count) {
    const { pd } = this.worksheet.getComposedCellStyle(row, column);
    const sides = (pd?.l ?? 0) + (pd?.r ?? 0);
    const wide = size === undefined || size === null ? size : { ...size, width: size.width + sides };
    return positionOf.call(this, wide, across, row, column, count);
  };
}
