import { withoutEquals, type EnteredFormula, type StoredFormula, type TypedFormula } from '../cell/formulaText.js';
import { closingAt, formulaTokens, type Token } from './formulaTokens.js';
import { storedName } from './functionName.js';
import type { OutsideNames } from './outsideFunctions.js';
import { parameterTokens } from './parameterTokens.js';
import { structuredReference, structuredText } from './structuredReference.js';

/** A formula as files hold it: prefixes before functions from outside, newer ones and the names of LET and LAMBDA. */
export function formulaAsStored(typed: TypedFormula | EnteredFormula, outside: OutsideNames): StoredFormula {
  const tokens = formulaTokens(withoutEquals(typed));
  const parameters = parameterTokens(tokens);
  const pieces = tokens.map((token, i) =>
    parameters.has(i) ? storedParameter(token.text) : storedToken(token, outside),
  );
  tokens.forEach(({ kind, text }, i) => {
    if (kind !== 'operator' || (text !== '#' && text !== '@')) return;
    const [first, last] = text === '#' ? [operandBefore(tokens, i), i] : [i, operandAfter(tokens, i)];
    if (first === undefined || last === undefined) return;
    if (text === '#') {
      pieces[first] = `_xlfn.ANCHORARRAY(${pieces[first] ?? ''}`;
      pieces[i] = ')';
    } else {
      pieces[i] = '_xlfn.SINGLE(';
      pieces[last] = `${pieces[last] ?? ''})`;
    }
  });
  return pieces.join('');
}

function storedParameter(text: string): string {
  return `_xlpm.${text.replace(/^_xlpm\./i, '')}`;
}

function storedToken({ kind, text }: Token, outside: OutsideNames): string {
  if (kind === 'function') return storedName(text, outside);
  const reference = kind === 'table' ? structuredReference(text) : undefined;
  return reference?.parts.join() === '#This Row' ? structuredText(reference, 'stored') : text;
}

/** Where the operand begins that ends just before a place. */
function operandBefore(tokens: readonly Token[], at: number): number | undefined {
  const last = at - 1;
  if (tokens[last]?.kind !== 'close') return isOperand(tokens[last]) ? last : undefined;
  for (let i = last - 1; i >= 0; i -= 1) {
    if (tokens[i]?.kind === 'open' && closingAt(tokens, i) === last)
      return tokens[i - 1]?.kind === 'function' ? i - 1 : i;
  }
  return undefined;
}

/** Where the operand ends that begins just after a place. */
function operandAfter(tokens: readonly Token[], at: number): number | undefined {
  let first = at + 1;
  while (tokens[first]?.kind === 'space') first += 1;
  const open = tokens[first]?.kind === 'function' ? first + 1 : first;
  if (tokens[open]?.kind !== 'open') return isOperand(tokens[first]) ? first : undefined;
  const close = closingAt(tokens, open);
  return close < tokens.length ? close : undefined;
}

function isOperand(token: Token | undefined): boolean {
  return token !== undefined && ['reference', 'name', 'table', 'outside'].includes(token.kind);
}
