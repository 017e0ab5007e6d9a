import type { StoredFormula } from '../../cell/formulaText.js';
import { formulaTokens, type Token } from '../../formula/formulaTokens.js';
import { typedName } from '../../formula/functionName.js';
import type { OutsideNames } from '../../formula/outsideFunctions.js';
import { FileProblem } from '../../zip/fileProblem.js';

/** A stored formula as an .ods file holds it: `of:=SUM([.A1:.B2];1)`. Refused where the open format cannot express a part of it. */
export function openFormula(formula: StoredFormula, outside: OutsideNames): string {
  const tokens = formulaTokens(formula.replace(/^=/, ''));
  const brackets: boolean[] = [];
  let inArray = false;
  const pieces = tokens.map((token, index) => {
    const { kind, text } = token;
    if (kind === 'open') brackets.push(tokens[index - 1]?.kind === 'function');
    if (kind === 'close') brackets.pop();
    if (kind === 'openBrace') inArray = true;
    if (kind === 'closeBrace') inArray = false;
    if (kind === 'reference') return openReference(text, formula);
    // Arguments are separated by semicolons; a comma outside a call joins ranges.
    if (kind === 'comma') return inArray || (brackets[brackets.length - 1] ?? false) ? ';' : '~';
    if (kind === 'semicolon') return '|';
    if (!isKnown(token, outside, [tokens[index - 1], tokens[index + 1]])) throw cannotHold(formula);
    return text;
  });
  return `of:=${pieces.join('')}`;
}

function isKnown(
  { kind, text }: Token,
  outside: OutsideNames,
  [before, after]: readonly (Token | undefined)[],
): boolean {
  if (kind === 'unknown' || kind === 'outside' || kind === 'table') return false;
  if (kind === 'operator') return text !== '#' && text !== '@' && text !== ':';
  // A space between two ranges means their intersection.
  if (kind === 'space') return before?.kind !== 'reference' || after?.kind !== 'reference';
  if (kind === 'function')
    return !/^_xl(fn|ws|pm)\./i.test(text) && (!text.includes('.') || outside.has(typedName(text)));
  return kind !== 'name' || !(text.includes('!') || /^_xl/i.test(text));
}

function openReference(text: string, formula: string): string {
  const [, sheet, area = ''] = /^(?:(.+)!)?([^!]+)$/.exec(text) ?? [];
  if (area.startsWith('#')) throw cannotHold(formula);
  const place = sheet === undefined ? '' : `$${sheet}`;
  const [first = '', ...last] = area.split(':');
  return `[${[`${place}.${first}`, ...last.map((end) => `.${end}`)].join(':')}]`;
}

function cannotHold(formula: string): FileProblem {
  return new FileProblem(
    `The formula =${formula.slice(0, 60)} has parts that an .ods file cannot hold: save the file as .xlsx first.`,
  );
}
