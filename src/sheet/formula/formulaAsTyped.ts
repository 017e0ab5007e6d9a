import type { StoredFormula, TypedFormula } from '../cell/formulaText.js';
import { closingAt, formulaTokens, type Token } from './formulaTokens.js';
import { typedName } from './functionName.js';
import type { OutsideNames } from './outsideFunctions.js';
import { structuredReference, structuredText } from './structuredReference.js';

/** A formula as people see and type it: without the prefixes that files put before names, `G1#` and `@` for their functions. */
export function formulaAsTyped(stored: StoredFormula, outside: OutsideNames): TypedFormula {
  return typed(formulaTokens(stored), outside);
}

function typed(tokens: readonly Token[], outside: OutsideNames): string {
  let text = '';
  for (let i = 0; i < tokens.length; i += 1) {
    const token = tokens[i];
    if (token === undefined) continue;
    const name = token.kind === 'function' ? typedName(token.text) : '';
    if ((name === 'ANCHORARRAY' || name === 'SINGLE') && tokens[i + 1]?.kind === 'open') {
      const close = closingAt(tokens, i + 1);
      const inner = typed(tokens.slice(i + 2, close), outside).trim();
      text += name === 'SINGLE' ? `@${inner}` : `${inner}#`;
      i = close;
    } else text += typedToken(token, outside);
  }
  return text;
}

function typedToken({ kind, text }: Token, outside: OutsideNames): string {
  if (kind === 'function') {
    const name = typedName(text);
    return outside.has(name) ? name : text.replace(/^(?:_xlfn\.|_xlws\.|_xlpm\.)+/i, '');
  }
  if (kind === 'name') return text.replace(/^(?:_xlpm\.|_xlfn\.)+/i, '');
  if (kind === 'table') {
    const reference = structuredReference(text);
    return reference?.parts.join() === '#This Row' ? structuredText(reference, 'typed') : text;
  }
  return text;
}
