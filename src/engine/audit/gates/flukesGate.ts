import * as limits from '../../limits/limits.js';
import { secondBathWindow } from '../../plan/secondBathWindow.js';
import type { Treatment } from '../../rules/treatment.js';
import type { Gate } from './gate.js';
import { medicineOf } from '../../plan/medicineOf.js';
import { isDenied } from '../../rules/isDenied.js';

/** Whether praziquantel is noted: copper days never count for flukes. A second bath belongs in its window. */
export function flukesGate(treatment: Treatment): Gate {
  const [first, ...later] = praziquantelBaths(treatment);
  if (first === undefined) {
    return { name: 'flukes treated', met: 'no', since: null, why: { code: 'no-praziquantel' } };
  }
  const { from, until } = secondBathWindow();
  // Noted at another time of day, a bath is still of that day.
  const second =
    later.find((when) => when - first >= from - limits.bathDay.value && when - first <= until + limits.bathDay.value) ??
    null;
  const why = { code: 'praziquantel', first, second, from, until } as const;
  return { name: 'flukes treated', met: 'yes', since: second ?? first, why };
}

const maybe = /\b(?:pra[sz]\w*|pzq)\b/gi;
/** Bought or meant, not given. */
const planned =
  /\b(?:order(?:ed|ing)?|bought|buy|plan(?:ned|s|ning)?|tomorrow|next|will|to ?do|should|needs?|due|remember|consider(?:ing)?|later|arrived|if)\b/i;

/**
 * When praziquantel was given, as the notes say it.
 *
 * Definition: rows whose note, text about the fish or column of flukes names it, unless it is denied there, or only
 * bought or planned.
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
