import { closingAt } from './closingAt.js';
import { formulaTokens } from './formulaTokens.js';
import { isOurs } from './isOurs.js';
import { structuredReference } from './structuredReference.js';
import { structuredText } from './structuredText.js';
import type { Token } from './token.js';
import { typedName } from './typedName.js';

/** A formula as people see and type it: without the prefixes that files put before names, `G1#` and `@` for their functions. */
export function formulaAsTyped(stored: string): string {
  return typed(formulaTokens(stored));
}

function typed(tokens: readonly Token[]): string {
  let text = '';
  for (let i = 0; i < tokens.length; i += 1) {
    const token = tokens[i];
    if (token === undefined) continue;
    const name = token.kind === 'function' ? typedName(token.text) : '';
    if ((name === 'ANCHORARRAY' || name === 'SINGLE') && tokens[i + 1]?.kind === 'open') {
      const close = closingAt(tokens, i + 1);
      const inner = typed(tokens.slice(i + 2, close)).trim();
      text += name === 'SINGLE' ? `@${inner}` : `${inner}#`;
      i = close;
    } else text += typedToken(token);
  }
  return text;
}

function typedToken({ kind, text }: Token): string {
  if (kind === 'function') return isOurs(text) ? typedName(text) : text.replace(/^(?:_xlfn\.|_xlws\.|_xlpm\.)+/i, '');
  if (kind === 'name') return text.replace(/^(?:_xlpm\.|_xlfn\.)+/i, '');
  if (kind === 'table') {
    const reference = structuredReference(text);
    return reference?.parts.join() === '#This Row' ? structuredText(reference, 'typed') : text;
  }
  return text;
}
