import type { CellValue } from '../cell/cellValue.js';
import { serialOfIso } from '../book/isoDay.js';
import { daysOfDuration } from './duration.js';
import type { CellRange } from '../address/cellRange.js';
import type { BookCell } from '../book/book.js';
import type { CellLook } from '../book/cellLook.js';
import { from1900 } from '../book/from1900.js';
import type { XmlAttributes } from '../xml/walkXml.js';
import { formulaOfOds } from './formulaOfOds.js';
import { spanAt } from './odsSpans.js';

/** What a cell takes from its place and its style. */
interface Around extends Look {
  readonly place: { readonly row: number; readonly column: number };
  readonly date1904: boolean;
  readonly look?: CellLook | undefined;
}

/** One cell of an .ods file; undefined for one that holds nothing and looks like nothing. */
export function odsCell(attributes: XmlAttributes, around: Around): BookCell | undefined {
  const read = odsValue(attributes, around);
  const format = around.format ?? read.format;
  const formula = formulaOfOds(attributes['table:formula'] ?? '');
  if (read.value === null && formula === '' && format === undefined && around.look === undefined) return undefined;
  const shifts = around.date1904 && attributes['office:value-type'] !== 'date';
  return {
    value: shifts ? from1900(read.value, format) : read.value,
    ...(formula === '' ? {} : withFormula(formula, spanAt(around.place, attributes, 'matrix'))),
    ...(format === undefined ? {} : { format }),
    ...(around.look === undefined ? {} : { look: around.look }),
  };
}

function withFormula(formula: string, fills: CellRange | undefined): { formula: string; fills?: CellRange } {
  return fills === undefined ? { formula } : { formula, fills };
}

/** The value of a cell, and a format for days and times that have none of their own. */
interface OdsValue {
  readonly value: CellValue;
  readonly format?: string;
}

/** What a cell shows, undefined without any text, and the number format of its style. */
interface Look {
  readonly shown: string | undefined;
  readonly format: string | undefined;
}

export function odsValue(attributes: XmlAttributes, look: Look): OdsValue {
  const { shown } = look;
  if (attributes['calcext:value-type'] === 'error') return { value: errorOf(shown ?? '') };
  const type = attributes['office:value-type'];
  switch (type) {
    case 'float':
    case 'percentage':
    case 'currency':
      return { value: numberOf(attributes['office:value'], look) };
    case 'date': {
      const text = attributes['office:date-value'] ?? '';
      return { value: serialOfIso(text) ?? text, format: text.includes('T') ? 'yyyy-mm-dd hh:mm' : 'yyyy-mm-dd' };
    }
    case 'time': {
      const text = attributes['office:time-value'] ?? '';
      return { value: daysOfDuration(text) ?? text, format: '[hh]:mm:ss' };
    }
    case 'boolean':
      return { value: attributes['office:boolean-value'] === 'true' };
    case 'string':
      return { value: attributes['office:string-value'] ?? shown ?? '' };
    case undefined:
    default:
      return { value: shown ?? null };
  }
}

/** A number without a format that shows letters is how LibreOffice writes TRUE and FALSE, in its own language. */
function numberOf(stated: string | undefined, look: Look): CellValue {
  if (stated === undefined || stated.trim() === '') return look.shown ?? null;
  const number = Number(stated);
  if (!Number.isFinite(number)) return stated;
  const words = look.format === undefined && /^\p{L}+$/u.test(look.shown ?? '');
  return words && (number === 0 || number === 1) ? number === 1 : number;
}

/** A program's own numbered errors all stand for a faulty formula or argument. */
function errorOf(shown: string): CellValue {
  return { type: 'Error', basicValue: shown.startsWith('#') ? shown : '#VALUE!' };
}
