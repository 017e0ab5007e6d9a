import type { BookSheet, BookTable, DefinedName } from '../book/book.js';
import { bookLimits } from '../book/bookLimits.js';
import { rangeIn } from '../address/cellRange.js';
import type { XmlAttributes } from '../xml/walkXml.js';
import { formulaOfOds, referenceOf } from './formulaOfOds.js';

interface Region {
  readonly name: string;
  readonly place: string;
  readonly headings: boolean;
}

/** Names and named tables of an .ods file as they are met. */
export class OdsNames {
  readonly names: DefinedName[] = [];
  readonly #regions: Region[] = [];

  open(element: string, attributes: XmlAttributes, sheet: string | undefined): void {
    const name = attributes['table:name'] ?? '';
    if (element === 'table:named-range') {
      this.#putName(name, referenceOf(attributes['table:cell-range-address'] ?? ''), sheet);
    } else if (element === 'table:named-expression') {
      this.#putName(name, formulaOfOds(attributes['table:expression'] ?? ''), sheet);
    } else if (element === 'table:database-range' && this.#regions.length < bookLimits.listed) {
      const place = referenceOf(attributes['table:target-range-address'] ?? '');
      this.#regions.push({ name, place, headings: attributes['table:contains-header'] !== 'false' });
    }
  }

  /** A range without a name of its own only holds a filter. The names of columns are those of the heading row. */
  tables(sheets: readonly BookSheet[]): BookTable[] {
    return this.#regions.flatMap(({ name, place, headings }) => {
      const parts = /^(?:'((?:[^']|'')*)'|([^']*))!(.*)$/.exec(place);
      const sheetName = parts?.[1]?.replace(/''/g, "'") ?? parts?.[2];
      const range = rangeIn(parts?.[3]);
      const sheet = sheets.find((one) => one.name === sheetName);
      if (name === '' || name.startsWith('__Anonymous') || range === undefined || sheet === undefined) return [];
      const columns = Array.from({ length: range.lastColumn - range.firstColumn + 1 }, (_, index) => {
        const heading = headings ? sheet.rows[range.firstRow]?.[range.firstColumn + index]?.value : undefined;
        return typeof heading === 'string' || typeof heading === 'number' ? String(heading) : `Column${index + 1}`;
      });
      return [{ name, sheet: sheet.name, range, columns, headings, totals: false }];
    });
  }

  #putName(name: string, formula: string, sheet: string | undefined): void {
    if (name === '' || this.names.length >= bookLimits.listed) return;
    this.names.push(sheet === undefined ? { name, formula } : { name, formula, sheet });
  }
}
