import { medicineOf } from '../../plan/medicineOf.js';
import { isDenied } from '../../rules/isDenied.js';
import type { Treatment } from '../../rules/treatment.js';

const maybe = /\b(?:pra[sz]\w*|pzq)\b/gi;
/** Bought or meant, not given. */
const planned =
  /\b(?:order(?:ed|ing)?|bought|buy|plan(?:ned|s|ning)?|tomorrow|next|will|to ?do|should|needs?|due|remember|consider(?:ing)?|later|arrived|if)\b/i;

/**
 * When praziquantel was given, as the notes say it.
 *
 * Definition: rows whose note, text about the fish or column of flukes names it, unless it is denied there, or only bought or planned.
 *
 * @param treatment log
 * @returns times in time order [serial day]
 */
export function praziquantelBaths({ log }: Treatment): readonly number[] {
  const { note, signs, flukes } = log.texts;
  const baths: number[] = [];
  for (let index = 0; index < log.count; index++) {
    if ([note, signs, flukes].some((texts) => isGiven(texts?.[index] ?? ''))) baths.push(log.when[index] ?? NaN);
  }
  return baths;
}

function isGiven(text: string): boolean {
  if (text === '') return false;
  for (const match of text.matchAll(maybe)) {
    const span = { from: match.index, to: match.index + match[0].length };
    if (medicineOf(match[0]) !== 'praziquantel' || isDenied(text, span)) continue;
    if (!planned.test(clauseAround(text, span))) return true;
  }
  return false;
}

function clauseAround(text: string, { from, to }: { from: number; to: number }): string {
  const before = text.slice(0, from).split(/[.;,\n]/);
  const [after = ''] = text.slice(to).split(/[.;,\n]/);
  return `${before[before.length - 1] ?? ''} ${after}`;
}
