import type { CellRange } from '../address/cellRange.js';
import type { CellValue } from '../cell/cellValue.js';
import type { FormulaNode } from '../formula/formulaNode.js';
import { givesMoments, type OutsideFunctions } from '../formula/outsideFunctions.js';

/** Whether what a part of a formula gives holds moments, by column. */
export type MomentColumns = (column: number) => boolean;

interface MomentTerms {
  readonly outside: OutsideFunctions;
  /** Heading rows of the tables that functions from outside gave, by the name of the function. */
  readonly headings: ReadonlyMap<string, readonly CellValue[]>;
  /** Whether cells of a range show days, by column. */
  showsDays(sheet: string | undefined, range: CellRange): MomentColumns;
  /** Values of LET, in lower case. */
  readonly names?: ReadonlyMap<string, MomentColumns>;
}

type Given = readonly (FormulaNode | undefined)[];

/** Functions that give a moment whatever they are given. */
const moments = new Set(['NOW', 'TODAY', 'DATE', 'DATEVALUE', 'EDATE', 'EOMONTH', 'WORKDAY']);
/** Functions that give a moment where their first argument is one, its columns as they are. */
const likeFirst = new Set(
  'ROUND ROUNDUP ROUNDDOWN INT TRUNC MROUND CEILING FLOOR SINGLE TAKE DROP FILTER SORT SORTBY UNIQUE'.split(' '),
);
/** Functions that give one of their arguments, from the one of this number on. */
const oneOf: ReadonlyMap<string, number> = new Map([
  ['IF', 1],
  ['CHOOSE', 1],
  ['IFERROR', 0],
  ['IFNA', 0],
  ['MIN', 0],
  ['MAX', 0],
  ['MEDIAN', 0],
  ['LARGE', 0],
  ['SMALL', 0],
]);
const never: MomentColumns = () => false;
const always: MomentColumns = () => true;

/**
 * Whether the answer of a formula is a moment, as far as its text shows: in a file that counts its days from 1904, moments
 * are stored in another way than numbers.
 */
export function momentColumns(node: FormulaNode, terms: MomentTerms): MomentColumns {
  switch (node.kind) {
    case 'value':
    case 'array':
    case 'apply':
      return never;
    case 'reference':
      return terms.showsDays(node.sheet, node.range);
    case 'name':
      return terms.names?.get(node.name) ?? never;
    case 'unary':
      return node.operator === '+' || node.operator === '@' ? momentColumns(node.of, terms) : never;
    case 'binary':
      return ofSum(node, terms);
    case 'call':
      return terms.outside.has(node.name) ? ofOutside(node.name, terms) : ofUsual(node.name, node.given, terms);
  }
}

/** A moment and a number of days are a moment; two moments have a number of days between them. */
function ofSum(node: Extract<FormulaNode, { kind: 'binary' }>, terms: MomentTerms): MomentColumns {
  if (node.operator !== '+' && node.operator !== '-') return never;
  const [left, right] = [momentColumns(node.left, terms), momentColumns(node.right, terms)];
  return node.operator === '+'
    ? (column) => left(column) !== right(column)
    : (column) => left(column) && !right(column);
}

function ofOutside(name: string, { outside, headings }: MomentTerms): MomentColumns {
  const [columns, row] = [outside.columns(name), headings.get(name)];
  return (column) => givesMoments(columns, row?.[column]);
}

function ofUsual(name: string, given: Given, terms: MomentTerms): MomentColumns {
  if (moments.has(name)) return always;
  if (name === 'LET') return ofLet(given, terms);
  if (name === 'INDEX') return ofIndex(given, terms);
  if (likeFirst.has(name)) return ofPart(given[0], terms);
  const from = oneOf.get(name);
  if (from === undefined) return never;
  const choices = given.slice(from).map((one) => ofPart(one, terms));
  return (column) => choices.some((choice) => choice(column));
}

function ofLet(given: Given, terms: MomentTerms): MomentColumns {
  const names = new Map(terms.names);
  for (let i = 0; i + 1 < given.length; i += 2) {
    const name = given[i];
    if (name?.kind === 'name') names.set(name.name, ofPart(given[i + 1], { ...terms, names }));
  }
  return ofPart(given.at(-1), { ...terms, names });
}

/** One column of a table, where its number is written out. */
function ofIndex([table, , column]: Given, terms: MomentTerms): MomentColumns {
  const columns = ofPart(table, terms);
  if (column === undefined) return columns;
  if (column.kind !== 'value' || typeof column.value !== 'number') return never;
  const number = column.value;
  return number === 0 ? columns : () => columns(number - 1);
}

function ofPart(node: FormulaNode | undefined, terms: MomentTerms): MomentColumns {
  return node === undefined ? never : momentColumns(node, terms);
}
