import { ok, type Result } from '../../../engine/index.js';
import type { CellValue, Given } from '../../../sheet/index.js';
import type { FormulaFault } from './formula.js';
import type { FormulaText } from './formulaText.js';

const number = /[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?/i;
const quoted = /"(?:[^"]|"")*"/;
const error = /#(?:N\/A|VALUE!|REF!|DIV\/0!|NUM!|NAME\?|NULL!)/i;
const truth = /(?:TRUE|FALSE)(?![A-Z0-9_.(])/i;
const reference = /(?:'[^']*'!|\w+!)?(?:\$?[A-Z]{1,3}\$?\d+|\$?[A-Z]{1,3}:\$?[A-Z]{1,3}(?![A-Z(]))/i;
const call = /[A-Z_][\w.]*\s*\(/i;

/** One argument: a value, or an array constant such as `{46082;46083}`. */
export function literalIn(text: FormulaText): Result<Given, FormulaFault> {
  return text.take(/\{/) === undefined ? valueIn(text) : arrayIn(text);
}

/** Rows apart by semicolons, cells of a row by commas, as many in every row. */
function arrayIn(text: FormulaText): Result<CellValue[][], FormulaFault> {
  const rows: CellValue[][] = [[]];
  for (;;) {
    const value = valueIn(text);
    if (!value.ok) return value;
    rows.at(-1)?.push(value.value);
    const [first, last] = [rows[0], rows.at(-1)];
    if (text.has(/[;}]/) && first?.length !== last?.length) {
      return text.fault(`row ${rows.length} of the array has ${last?.length} cells, the first ${first?.length}`);
    }
    const separator = text.take(/[,;}]/);
    if (separator === undefined) return text.fault('write a comma, a semicolon or } in the array');
    if (separator === '}') return ok(rows);
    if (separator === ';') rows.push([]);
  }
}

function valueIn(text: FormulaText): Result<CellValue, FormulaFault> {
  const string = text.take(quoted);
  if (string !== undefined) return ok(string.slice(1, -1).replaceAll('""', '"'));
  if (text.has(/"/)) return text.fault('the text has no closing quote');
  const word = text.take(truth);
  if (word !== undefined) return ok(word.toUpperCase() === 'TRUE');
  const code = text.take(error);
  if (code !== undefined) return ok({ type: 'Error', basicValue: code.toUpperCase() });
  if (text.has(call)) return text.fault('a function within a function is not read here; write its value');
  if (text.has(reference)) return text.fault('there is no sheet to look in; write the value itself');
  const digits = text.take(number);
  if (digits === undefined) return text.fault('write a number, "text", TRUE, FALSE or an array such as {1;2}');
  const value = Number(digits);
  if (!Number.isFinite(value)) return text.fault('the number before this is too large');
  return ok(text.take(/%/) === undefined ? value : value / 100);
}
