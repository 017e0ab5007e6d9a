import { columnNumber } from '../address/cellKey.js';
import { sheetLimits } from '../address/sheetLimits.js';

export type TokenKind =
  | 'space'
  | 'number'
  | 'text'
  | 'error'
  | 'truth'
  | 'operator'
  | 'open'
  | 'close'
  | 'comma'
  | 'semicolon'
  | 'openBrace'
  | 'closeBrace'
  /** The name of a function; its bracket is the next token. */
  | 'function'
  /** A cell, a range, whole columns or rows, with their sheet if it is named. */
  | 'reference'
  /** A defined name, a whole table, or a name that LET or LAMBDA gives a value; with its sheet if it is named. */
  | 'name'
  /** Part of a table, such as `Log[Level]`. */
  | 'table'
  /** In another file, or in several sheets at once. */
  | 'outside'
  | 'unknown';

/** A part of a formula; the texts of its tokens joined together are the formula. */
export interface Token {
  readonly kind: TokenKind;
  readonly text: string;
}

const quotedSheet = String.raw`'(?:[^']|'')+'`;
const bareSheet = String.raw`[\p{L}\p{N}_.]+`;
const sheet = String.raw`(?:(?:${quotedSheet}|${bareSheet})!)`;
const cell = String.raw`\$?[A-Z]{1,3}\$?[1-9]\d{0,6}`;
const area = String.raw`(?:${cell}:${cell}|${cell}|\$?[A-Z]{1,3}:\$?[A-Z]{1,3}|\$?[1-9]\d{0,6}:\$?[1-9]\d{0,6}|#REF!)`;
const word = String.raw`[\p{L}_\\][\p{L}\p{N}_.\\?]*`;
const end = String.raw`(?![\p{L}\p{N}_.\\?(!\[])`;
const elsewhere = String.raw`(?:\[[^\]]+\](?:${bareSheet})?|'[^']*[[:](?:[^']|'')*'|${bareSheet}:${bareSheet})!`;

const patterns: readonly (readonly [TokenKind, RegExp])[] = (
  [
    ['space', String.raw`\s+`],
    ['text', String.raw`"(?:[^"]|"")*"`],
    ['outside', `${elsewhere}(?:${area}${end}|${word})`],
    ['reference', `${sheet}?${area}${end}`],
    ['error', String.raw`#(?:N/A|VALUE!|REF!|DIV/0!|NUM!|NAME\?|NULL!|SPILL!|CALC!|FIELD!|BUSY!|GETTING_DATA)`],
    ['number', String.raw`(?:\d+\.?\d*|\.\d+)(?:E[+-]?\d+)?`],
    ['truth', String.raw`(?:TRUE|FALSE)${end}`],
    ['function', String.raw`${word}(?=\()`],
    ['table', String.raw`(?:${word})?\[`],
    ['name', `${sheet}?${word}`],
    ['operator', String.raw`<=|>=|<>|[-+*/^&=<>%:@#]`],
    ['open', String.raw`\(`],
    ['close', String.raw`\)`],
    ['comma', ','],
    ['semicolon', ';'],
    ['openBrace', String.raw`\{`],
    ['closeBrace', String.raw`\}`],
    // A quoted name with no reference after it is one token: looked at quote by quote, a long row of quotes takes forever.
    ['unknown', String.raw`"[^]*|'(?:[^']|'')*'?|[^]`],
  ] as const
).map(([kind, source]) => [kind, new RegExp(source, 'iuy')]);

/** The tokens of a formula without its `=`. Never fails: anything that is not part of a formula is `unknown`. */
export function formulaTokens(formula: string): Token[] {
  const tokens: Token[] = [];
  for (let at = 0; at < formula.length;) {
    const token = tokenAt(formula, at);
    tokens.push(token);
    at += token.text.length;
  }
  return tokens;
}

function tokenAt(formula: string, at: number): Token {
  for (const [kind, pattern] of patterns) {
    pattern.lastIndex = at;
    const text = pattern.exec(formula)?.[0];
    if (text === undefined) continue;
    if (kind === 'reference' && !isWithinSheet(text)) continue;
    if (kind === 'table') return tableAt(formula, at, text.length);
    return { kind, text };
  }
  return { kind: 'unknown', text: formula.slice(at) };
}

/** Up to the bracket that closes the first one; within brackets `'` takes the next character as it is. */
function tableAt(formula: string, start: number, opened: number): Token {
  let depth = 1;
  let at = start + opened;
  for (; at < formula.length && depth > 0; at += 1) {
    const letter = formula[at];
    if (letter === "'") at += 1;
    else if (letter === '[') depth += 1;
    else if (letter === ']') depth -= 1;
  }
  const text = formula.slice(start, at);
  return { kind: depth === 0 ? 'table' : 'unknown', text };
}

/** Whether the cells of a reference can exist: `XFE1` and `A1048577` are names. */
function isWithinSheet(reference: string): boolean {
  const address = reference.slice(reference.lastIndexOf('!', reference.length - 2) + 1);
  if (address.startsWith('#')) return true;
  const columns = address.match(/[A-Z]+/gi) ?? [];
  const rows = address.match(/\d+/g) ?? [];
  return (
    columns.every((letters) => columnNumber(letters) < sheetLimits.columns) &&
    rows.every((digits) => Number(digits) <= sheetLimits.rows)
  );
}

/** The place of the closing bracket for an opening one; the number of tokens where it is missing. */
export function closingAt(tokens: readonly Token[], open: number): number {
  let depth = 0;
  for (let i = open; i < tokens.length; i += 1) {
    if (tokens[i]?.kind === 'open') depth += 1;
    else if (tokens[i]?.kind === 'close') depth -= 1;
    if (depth === 0) return i;
  }
  return tokens.length;
}
