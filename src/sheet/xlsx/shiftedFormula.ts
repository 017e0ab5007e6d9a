import { columnLetters } from '../address/addressOf.js';
import { bookLimits } from '../book/bookLimits.js';

/**
 * Text in quotes, a quoted sheet, whole columns, whole rows, a number, a word. In brackets stand names of columns and
 * of other files, two deep at most; they never move. What opens and never closes reaches to the end.
 */
const token =
  /"(?:[^"]|"")*(?:"|$)|'(?:[^']|'')*(?:'|$)|\[(?:'(?:.|$)|[^[\]']|\[(?:'(?:.|$)|[^[\]'])*\])*(?:\]|$)|(\$?)([A-Za-z]{1,3}):(\$?)([A-Za-z]{1,3})(?![\w.!($])|(\$?)(\d{1,7}):(\$?)(\d{1,7})(?![\w.])|\d+(?:\.\d*)?(?:[Ee][+-]?\d+)?|[\p{L}_\\$?][\p{L}\p{M}\p{N}_.\\$?]*/gsu;
const cell = /^(\$?)([A-Za-z]{1,3})(\$?)(\d{1,7})$/;
const lost = '#REF!';

/** A formula that several cells share, as it reads so many rows and columns further on: only relative places move. */
export function shiftedFormula(formula: string, rows: number, columns: number): string {
  return formula.replace(token, (text: string, ...found: unknown[]) => {
    const groups = found.slice(0, 8).map((part) => (typeof part === 'string' ? part : undefined));
    const [leftFixed, left, rightFixed, right, topFixed, top, bottomFixed, bottom] = groups;
    if (left !== undefined && right !== undefined) {
      return spanned(shiftedColumn(leftFixed, left, columns), shiftedColumn(rightFixed, right, columns));
    }
    if (top !== undefined && bottom !== undefined) {
      return spanned(shiftedRow(topFixed, top, rows), shiftedRow(bottomFixed, bottom, rows));
    }
    const at = found[8];
    const next = typeof at === 'number' ? formula[at + text.length] : undefined;
    const parts = next === '(' || next === '!' ? null : cell.exec(text);
    // Letters beyond the last column of a sheet are a name.
    if (parts === null || shiftedColumn('', parts[2] ?? '', 0) === undefined) return text;
    const column = shiftedColumn(parts[1], parts[2] ?? '', columns);
    const row = shiftedRow(parts[3], parts[4] ?? '', rows);
    return column === undefined || row === undefined ? lost : `${column}${row}`;
  });
}

function spanned(first: string | undefined, last: string | undefined): string {
  return first === undefined || last === undefined ? lost : `${first}:${last}`;
}

function shiftedRow(fixed: string | undefined, row: string, by: number): string | undefined {
  if (fixed === '$') return `$${row}`;
  const shifted = Number(row) + by;
  return shifted >= 1 && shifted <= bookLimits.rows ? String(shifted) : undefined;
}

function shiftedColumn(fixed: string | undefined, letters: string, by: number): string | undefined {
  if (fixed === '$') return `$${letters}`;
  const column = [...letters.toUpperCase()].reduce((number, letter) => number * 26 + letter.charCodeAt(0) - 64, 0) - 1;
  const shifted = column + by;
  return shifted >= 0 && shifted < bookLimits.columns ? columnLetters(shifted) : undefined;
}
