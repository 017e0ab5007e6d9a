import type { CellPlace } from '../address/cellRange.js';
import type { BookTable, DefinedName } from '../book/book.js';
import type { StoredFormula, TypedFormula } from '../cell/formulaText.js';
import { formulaTokens, type Token } from './formulaTokens.js';
import { parameterTokens } from './parameterTokens.js';
import { shiftedReference, writeReference } from './plainReference.js';
import { structuredReference, type StructuredReference } from './structuredReference.js';
import { tableRange } from './tableRange.js';

/** The cell of a formula and what the names in it can mean. */
interface FormulaPlace extends CellPlace {
  readonly tables: readonly BookTable[];
  readonly names: readonly DefinedName[];
}

/**
 * A formula with plain references alone: parts of tables and defined names are replaced by the cells or the formula that
 * they stand for, also names within names. A relative reference of a name counts from the cell of the formula. A name
 * with no meaning stays; one that leads back to itself becomes `#REF!`.
 */
export function plainReferences<Form extends StoredFormula | TypedFormula>(formula: Form, place: FormulaPlace): Form {
  return plain(formula, place, []) as Form;
}

function plain(formula: string, place: FormulaPlace, within: readonly DefinedName[]): string {
  const tokens = formulaTokens(formula);
  if (!tokens.some(({ kind }) => kind === 'name' || kind === 'table' || kind === 'function')) return formula;
  const parameters = parameterTokens(tokens);
  return tokens.map((token, i) => (parameters.has(i) ? token.text : plainToken(token, place, within))).join('');
}

function plainToken({ kind, text }: Token, place: FormulaPlace, within: readonly DefinedName[]): string {
  if (kind === 'table') return tablePart(structuredReference(text), place);
  if (kind !== 'name' && kind !== 'function') return text;
  const name = nameIn(text, place);
  if (name !== undefined) return meaning(name, place, within);
  const isTable = kind === 'name' && place.tables.some((table) => isNamed(table, text));
  return isTable ? tablePart({ table: text, parts: [], columns: [] }, place) : text;
}

function meaning(name: DefinedName, place: FormulaPlace, within: readonly DefinedName[]): string {
  if (within.includes(name)) return '#REF!';
  const moved = formulaTokens(name.formula)
    .map(({ kind, text }) => (kind === 'reference' ? shiftedReference(text, place) : text))
    .join('');
  const replaced = plain(moved, place, [...within, name]);
  const [only, more] = formulaTokens(replaced);
  return only?.kind === 'reference' && more === undefined ? replaced : `(${replaced})`;
}

function tablePart(reference: StructuredReference | undefined, place: FormulaPlace): string {
  if (reference === undefined) return '#REF!';
  const table = place.tables.find((one) =>
    reference.table === '' ? holds(one, place) : isNamed(one, reference.table),
  );
  if (table === undefined) return '#REF!';
  const range = tableRange(table, reference, place.row);
  if (typeof range === 'string') return range;
  const fixed = { firstRow: true, firstColumn: true, lastRow: true, lastColumn: true };
  return writeReference({ range, fixed, ...(table.sheet === place.sheet ? {} : { sheet: table.sheet }) });
}

function isNamed(table: BookTable, text: string): boolean {
  return table.name.toLowerCase() === text.toLowerCase();
}

function holds({ sheet, range }: BookTable, place: FormulaPlace): boolean {
  const { firstRow, lastRow, firstColumn, lastColumn } = range;
  const { row, column } = place;
  return sheet === place.sheet && row >= firstRow && row <= lastRow && column >= firstColumn && column <= lastColumn;
}

/** The defined name that a word means in a sheet: `Sheet2!band` is that sheet's; otherwise the formula's own sheet comes before the book. */
function nameIn(
  text: string,
  { sheet, names }: { readonly sheet: string; readonly names: readonly DefinedName[] },
): DefinedName | undefined {
  const bang = text.lastIndexOf('!');
  const named = bang < 0 ? sheet : text.slice(0, bang).replace(/^'|'$/g, '').replaceAll("''", "'");
  const word = text.slice(bang + 1).toLowerCase();
  const alike = names.filter(({ name }) => name.toLowerCase() === word);
  return (
    alike.find((one) => one.sheet?.toLowerCase() === named.toLowerCase()) ??
    alike.find((one) => one.sheet === undefined)
  );
}
