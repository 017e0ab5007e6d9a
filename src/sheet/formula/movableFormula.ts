import { sheetLimits } from '../address/sheetLimits.js';
import type { StoredFormula } from '../cell/formulaText.js';
import { formulaTokens } from './formulaTokens.js';
import { readCorner, writeCorner, type Corner } from './plainReference.js';

/** Gives a formula as it reads so many rows further down and columns further to the right. */
export type MovableFormula = (rows: number, columns: number) => StoredFormula;

/** A formula that several cells share, read once. Only relative places move; what would leave the sheet becomes `#REF!`. */
export function movableFormula(formula: StoredFormula): MovableFormula {
  const pieces = formulaTokens(formula).map(({ kind, text }, i, tokens) => {
    const isReference = kind === 'reference' || (kind === 'outside' && tokens[i + 1]?.kind !== 'open');
    return isReference ? movableReference(text) : () => text;
  });
  return (rows, columns) => pieces.map((piece) => piece(rows, columns)).join('');
}

function movableReference(text: string): MovableFormula {
  const start = text.lastIndexOf('!', text.length - 2) + 1;
  const corners = text.slice(start).split(':').map(readCorner);
  const isWhole = corners.some((corner) => corner?.row === undefined || corner.column === undefined);
  // `#REF!`, or a name in another file.
  if (corners.includes(undefined) || (isWhole && corners.length === 1)) return () => text;
  return (rows, columns) => {
    const moved = corners.map((corner) => (corner === undefined ? undefined : movedCorner(corner, rows, columns)));
    const isLost = isWhole && moved.includes(undefined);
    return text.slice(0, start) + (isLost ? '#REF!' : moved.map((corner) => corner ?? '#REF!').join(':'));
  };
}

function movedCorner(corner: Corner, rows: number, columns: number): string | undefined {
  const row = corner.row === undefined || corner.fixedRow ? corner.row : corner.row + rows;
  const column = corner.column === undefined || corner.fixedColumn ? corner.column : corner.column + columns;
  const isInSheet =
    (row === undefined || (row >= 0 && row < sheetLimits.rows)) &&
    (column === undefined || (column >= 0 && column < sheetLimits.columns));
  return isInSheet ? writeCorner({ ...corner, row, column }) : undefined;
}
