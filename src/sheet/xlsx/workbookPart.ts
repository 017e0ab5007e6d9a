import { FileProblem } from '../zip/fileProblem.js';
import { bookLimits } from '../book/bookLimits.js';
import type { DefinedName } from '../book/book.js';
import type { PackageParts } from '../zip/packageParts.js';
import { walkXml, type XmlAttributes } from '../xml/walkXml.js';
import { type Relation, relationsOf } from './relationsOf.js';
import { spreadsheetPrefixes } from './spreadsheetPrefixes.js';

/** What the first part of an xlsx file says about all others. */
export interface WorkbookPart {
  readonly part: string;
  readonly sheets: readonly SheetPart[];
  readonly names: readonly DefinedName[];
  readonly date1904: boolean;
  readonly relations: readonly Relation[];
}

export interface SheetPart {
  readonly name: string;
  readonly hidden: boolean;
  readonly part: string;
}

export function workbookPart(parts: PackageParts): WorkbookPart {
  const part = relationsOf(parts, '').find((relation) => relation.type === 'officeDocument')?.part ?? 'xl/workbook.xml';
  const bytes = parts.bytes(part);
  if (bytes === undefined) throw new FileProblem('The file is damaged: the part that lists its sheets is missing.');
  const relations = relationsOf(parts, part);
  const read = listed(bytes, part);
  const sheets = read.sheets.flatMap(({ name, hidden, id }) => {
    const relation = relations.find((one) => one.id === id);
    return relation?.type === 'worksheet' && parts.has(relation.part) ? [{ name, hidden, part: relation.part }] : [];
  });
  if (sheets.length === 0) throw new FileProblem('The file has no sheet with cells; save it again as .xlsx.');
  return { part, sheets, names: read.names, date1904: read.date1904, relations };
}

interface Listed {
  readonly sheets: { readonly name: string; readonly hidden: boolean; readonly id: string }[];
  readonly names: DefinedName[];
  date1904: boolean;
}

function listed(bytes: Uint8Array, part: string): Listed {
  const found: Listed = { sheets: [], names: [], date1904: false };
  let name: XmlAttributes | undefined;
  let formula = '';
  walkXml(bytes, part, {
    prefixes: spreadsheetPrefixes,
    open: (element, attributes) => {
      if (element === 'workbookPr') found.date1904 = isTrue(attributes['date1904']);
      else if (element === 'sheet') found.sheets.push(sheetOf(attributes));
      else if (element === 'definedName') [name, formula] = [attributes, ''];
    },
    text: (text) => {
      if (name !== undefined) formula += text;
    },
    close: (element) => {
      if (element !== 'definedName' || name === undefined) return;
      if (found.names.length < bookLimits.listed) found.names.push(...nameOf(name, formula, found));
      name = undefined;
    },
  });
  return found;
}

function sheetOf(attributes: XmlAttributes): Listed['sheets'][number] {
  const state = attributes['state'] ?? 'visible';
  return { name: attributes['name'] ?? '', hidden: state !== 'visible', id: attributes['r:id'] ?? '' };
}

/** Names that a program keeps for itself, such as print areas, begin with `_xl`. The sheet is an index over all sheets. */
function nameOf(attributes: XmlAttributes, formula: string, found: Listed): DefinedName[] {
  const name = attributes['name'] ?? '';
  if (name === '' || /^_xl/i.test(name)) return [];
  const place = attributes['localSheetId'];
  const sheet = place === undefined ? undefined : found.sheets[Number(place)]?.name;
  return [{ name, formula, ...(sheet === undefined ? {} : { sheet }) }];
}

function isTrue(value: string | undefined): boolean {
  return value === '1' || value === 'true' || value === 'on';
}
