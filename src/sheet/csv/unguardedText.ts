import { formulaWithin } from './guardedText.js';
import { startsFormula } from './startsFormula.js';

const within = new RegExp(String.raw`([,;|\t\r\n][" \u00a0]*)'(?=${formulaWithin})`, 'g');

/** The text that `guardedText` wrote; any other text as it is. */
export function unguardedText(text: string): string {
  if (!text.includes("'")) return text;
  const rest = text.slice(1);
  return (text.startsWith("'") && startsFormula(rest) ? rest : text).replace(within, '$1');
}
