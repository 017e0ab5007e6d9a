import { type CellRange, columnLetters } from '../../../sheet/index.js';

/** Where something stands that a text names; undefined: the text is left as it is. */
type PlaceOf = (key: string, sheet: string | undefined) => CellRange | undefined;

const named = /\{(\$?)(?:([^{}!$]+)!)?([^{}!$]+)(\$?)\}/g;

/**
 * A text with the places it names as addresses: `{volume}` becomes `B4`, `{$volume$}` `$B$4`, `{$when}` `$A5`, and
 * `{Past log!log}` `'Past log'!A1:P70`. All A1 text of the templates is written here.
 */
export function withPlaces(text: string, placeOf: PlaceOf): string {
  return text.replace(named, (whole, column: string, sheet: string | undefined, key: string, row: string) => {
    const place = placeOf(key, sheet);
    if (place === undefined) return whole;
    const at = (r: number, c: number): string => `${column}${columnLetters(c)}${row}${r + 1}`;
    const [first, last] = [at(place.firstRow, place.firstColumn), at(place.lastRow, place.lastColumn)];
    return `${sheet === undefined ? '' : prefix(sheet)}${first === last ? first : `${first}:${last}`}`;
  });
}

function prefix(sheet: string): string {
  return /^\w+$/.test(sheet) ? `${sheet}!` : `'${sheet}'!`;
}
