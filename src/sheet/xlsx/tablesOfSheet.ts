import type { BookTable } from '../book/book.js';
import { bookLimits } from '../book/bookLimits.js';
import type { PackageParts } from '../zip/packageParts.js';
import { rangeIn } from '../address/cellRange.js';
import { walkXml, type XmlAttributes } from '../xml/walkXml.js';
import { relationsOf } from './relationsOf.js';
import { spreadsheetPrefixes } from './spreadsheetPrefixes.js';
import { unescapedText } from './escapedText.js';
import type { SheetPart } from './workbookPart.js';

/** The named tables that a sheet points to. */
export function tablesOfSheet(parts: PackageParts, sheet: SheetPart): BookTable[] {
  return relationsOf(parts, sheet.part)
    .filter((relation) => relation.type === 'table')
    .flatMap(({ part }) => {
      const bytes = parts.bytes(part);
      return bytes === undefined ? [] : tableIn(bytes, part, sheet.name);
    });
}

function tableIn(bytes: Uint8Array, part: string, sheet: string): BookTable[] {
  let table: XmlAttributes | undefined;
  const columns: string[] = [];
  walkXml(bytes, part, {
    prefixes: spreadsheetPrefixes,
    open: (element, attributes) => {
      if (element === 'table') table ??= attributes;
      else if (element === 'tableColumn' && columns.length < bookLimits.columns) {
        columns.push(unescapedText(attributes['name'] ?? ''));
      }
    },
  });
  const name = table?.['displayName'] ?? table?.['name'];
  const range = rangeIn(table?.['ref']);
  if (name === undefined || range === undefined) return [];
  const headings = (table?.['headerRowCount'] ?? '1') !== '0';
  const totals = (table?.['totalsRowCount'] ?? '0') !== '0';
  return [{ name, sheet, range, columns, headings, totals }];
}
