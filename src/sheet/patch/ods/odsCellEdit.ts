import type { CellRange } from '../../address/cellRange.js';
import { isCellError, type CellValue } from '../../cell/cellValue.js';
import { isDateFormat } from '../../book/isDateFormat.js';
import type { OutsideNames } from '../../formula/outsideFunctions.js';
import { odsValue } from '../../ods/odsCell.js';
import type { CellWrite } from '../cellWrite.js';
import { spliced } from '../splice.js';
import { tagWith } from '../tagWith.js';
import { odsContent, odsParagraphs } from './odsContent.js';
import type { OdsCellAt, OdsMap } from './odsMap.js';
import { openFormula } from './openFormula.js';

type Changes = Record<string, string | null>;

const numberTypes = new Set(['float', 'percentage', 'currency', 'date', 'time']);
const valueAttributes = [
  'office:value',
  'office:date-value',
  'office:time-value',
  'office:boolean-value',
  'office:string-value',
];

/**
 * One cell after a write, no longer repeated; undefined where it does not change.
 * @param style The style it shows, its own or that of its row or column.
 */
export function odsCellEdit(
  xml: string,
  cell: OdsCellAt,
  write: CellWrite,
  { map, outside, style }: { map: OdsMap; outside: OutsideNames; style: string | undefined },
): string | undefined {
  const format = map.styles.format(style);
  const formula = formulaChanges(cell, write, outside);
  const own = cell.known['table:formula'];
  const isFormula = formula['table:formula'] === undefined ? own !== undefined : formula['table:formula'] !== null;
  const isSame = sameValue(odsValue(cell.known, { shown: cell.shown, format }).value, write.value);
  if (isSame && Object.keys(formula).length === 0) return undefined;
  const content = odsContent(write.value, typeOf(cell, write, isDateFormat(format)), isFormula);
  const none = Object.fromEntries(
    ['office:value-type', 'calcext:value-type', ...valueAttributes].map((name) => [name, null]),
  );
  const currency = content.attributes['office:value-type'] === 'currency' ? {} : { 'office:currency': null };
  const values = isSame ? {} : { ...none, ...currency, ...content.attributes };
  const changes = inFile({ ...values, ...formula, 'table:number-columns-repeated': null }, map);
  const inner = isSame ? xml.slice(cell.tagTo, cell.contentTo) : withParagraphs(xml, cell, content.shown, map);
  const tag = tagWith(xml.slice(cell.from, cell.tagTo), changes);
  if (inner === '') return tag.replace(/\s*\/?>$/, '/>');
  return `${tag.replace(/\s*\/>$/, '>')}${inner}</${cell.name}>`;
}

/** The type of a number in this cell: as before, or else a date where its format shows one. */
function typeOf(cell: OdsCellAt, write: CellWrite, showsDay: boolean): string {
  const type = cell.known['office:value-type'] ?? '';
  if (write.isDate === true) return 'date';
  if (type !== 'float' && numberTypes.has(type)) return type;
  return showsDay ? 'date' : 'float';
}

function sameValue(stored: CellValue, value: CellValue): boolean {
  if (isCellError(stored) && isCellError(value)) return stored.basicValue === value.basicValue;
  return stored === value;
}

function formulaChanges(cell: OdsCellAt, { formula, fills }: CellWrite, outside: OutsideNames): Changes {
  const before = cell.known['table:formula'];
  if (formula === null) return before === undefined ? {} : { 'table:formula': null, ...span(cell, undefined) };
  if (formula === undefined) return fills && cell.known['table:number-matrix-columns-spanned'] ? span(cell, fills) : {};
  const after = openFormula(formula, outside);
  return { ...(after === before ? {} : { 'table:formula': after }), ...span(cell, fills) };
}

/** The changes for the rows and columns that an array formula fills. */
function span(cell: OdsCellAt, fills: CellRange | undefined): Changes {
  const changes: Changes = {};
  const put = (what: 'rows' | 'columns', count: number | undefined): void => {
    const name = `table:number-matrix-${what}-spanned`;
    const text = count === undefined ? null : String(count);
    if (text !== (cell.known[name] ?? null)) changes[name] = text;
  };
  put('columns', fills && fills.lastColumn - fills.firstColumn + 1);
  put('rows', fills && fills.lastRow - fills.firstRow + 1);
  return changes;
}

function inFile(changes: Changes, { naming }: OdsMap): Changes {
  const written: Changes = {};
  for (const [known, value] of Object.entries(changes)) {
    written[naming.inFile(known)] = value;
    if (value !== null) Object.assign(written, naming.declarationFor(known));
  }
  return written;
}

/** The new text in the place of the first paragraph; notes and drawings of the cell stay. */
function withParagraphs(xml: string, cell: OdsCellAt, shown: string | undefined, { naming }: OdsMap): string {
  const inner = xml.slice(cell.tagTo, cell.contentTo);
  const text = shown === undefined ? '' : odsParagraphs(shown, naming.inFile('text:'));
  if (cell.paragraphs.length === 0) return inner + text;
  const splices = cell.paragraphs.map(({ from, to }, index) => ({
    from: from - cell.tagTo,
    to: to - cell.tagTo,
    text: index === 0 ? text : '',
  }));
  return spliced(inner, splices);
}
