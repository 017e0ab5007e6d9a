import { HorizontalAlign, type IStyleData, WrapStrategy } from '@univerjs/core';
import {
  type Book,
  type BookSheet,
  type CellLook,
  type CellRange,
  type CellValue,
  isDateFormat,
  isInside,
  type LineStyle,
} from '../../sheet/index.js';
import { fileStyle } from './fileStyle.js';
import { headingStyle, numberHeadingStyle, plainStyle } from './usualStyles.js';

/** The styles of an opened file, each kept once, under the names that its cells in the grid give. */
export class BookStyles {
  /** By name, as cells name them. */
  readonly named: Record<string, IStyleData> = { heading: headingStyle, numberHeading: numberHeadingStyle };
  /** Of a cell that names none. */
  readonly plain: IStyleData;
  readonly #looks = new Map<CellLook, number>();
  readonly #own: CellLook | undefined;

  constructor({ plain }: Pick<Book, 'plain'>) {
    this.#own = plain;
    this.plain = plain === undefined ? plainStyle : fileStyle(plain);
  }

  /**
   * The name of a style; undefined: the plain one. Numbers never wrap, whatever their cell says, and neither does what
   * will stand in an empty cell with a number format.
   */
  nameOf({ look, format, value = null }: LineStyle & { readonly value?: CellValue }): string | undefined {
    const shown = format === 'General' || format === '' ? undefined : format;
    if (this.#own === undefined) return this.#formatAlone(shown);
    if (look === undefined && shown === undefined) return undefined;
    const own = look ?? this.#own;
    const inOneLine = typeof value === 'number' || (value === null && shown !== undefined && shown !== '@');
    let number = this.#looks.get(own);
    if (number === undefined) this.#looks.set(own, (number = this.#looks.size));
    const name = `look ${number}${inOneLine ? ' in one line' : ''} ${shown ?? ''}`;
    this.named[name] ??= { ...fileStyle(own, shown), ...(inOneLine ? { tb: WrapStrategy.CLIP } : {}) };
    return name;
  }

  /** In a file without looks times stand left, under their heading. */
  #formatAlone(format: string | undefined): string | undefined {
    if (format === undefined) return undefined;
    const name = `format ${format}`;
    this.named[name] ??= { n: { pattern: format }, ...(isDateFormat(format) ? { ht: HorizontalAlign.LEFT } : {}) };
    return name;
  }
}

/** Rows below a heading that are looked at. */
const rowsSeen = 60;

/**
 * The name of the style that sets off the heading of a log, aligned like the values below it; undefined for a cell that
 * is no heading, or that its own file sets off.
 */
export function headingName(
  { rows }: BookSheet,
  headings: readonly CellRange[],
  { row, column }: { readonly row: number; readonly column: number },
): string | undefined {
  if (!headings.some((range) => isInside(range, row, column))) return undefined;
  const look = rows[row]?.[column]?.look;
  if (look?.bold === true || look?.fill !== undefined || look?.borders !== undefined) return undefined;
  const first = rows
    .slice(row + 1, row + 1 + rowsSeen)
    .map((cells) => cells?.[column])
    .find((cell) => cell !== undefined && cell.value !== null);
  return typeof first?.value === 'number' && !isDateFormat(first.format) ? 'numberHeading' : 'heading';
}
