import type { CellRange } from '../address/cellRange.js';
import type { BookCell } from '../book/book.js';
import type { CellLook } from '../book/cellLook.js';
import { from1900 } from '../book/from1900.js';
import type { XmlAttributes } from '../xml/walkXml.js';
import { formulaOfOds } from './formulaOfOds.js';
import { type Look, odsValue } from './odsValue.js';
import { spanAt } from './odsSpans.js';

/** What surrounds a cell. */
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
