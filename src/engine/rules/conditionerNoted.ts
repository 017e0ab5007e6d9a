import { anyTextFits } from '../log/table/anyTextFits.js';
import { isDenied } from './isDenied.js';
import { daily, type Rule, type Found, type FindingWords } from './rule.js';
import { cut } from './phrases.js';
import type { Treatment } from './treatment.js';

interface ConditionerNoted {
  readonly code: 'conditioner-noted';
  readonly words: string;
}

/** Cheap, before the words themselves. */
const maybe = /condition|chlor|bind|detox|thiosul|ulfonate|ulphonate|ulfinate|ulphinate|dithion|neutrali/i;

/** Generic names alone. An air conditioner, good condition and chlorine in the tap water are none. */
const named = new RegExp(
  [
    String.raw`(?:(?:tap |water |detoxifying |tap water )*conditioners?\b)`,
    String.raw`(?:de-?chlor(?:inat(?:ors?|ers?|ed|ing|es?))?\b)`,
    String.raw`(?:chlor(?:ine|amine) (?:removers?|neutrali[sz]ers?|reducers?)\b)`,
    String.raw`(?:(?:ammonia|nh3|nitrogen)[ -]?(?:binders?|binding|detoxifiers?|detox|removers?|neutrali[sz](?:ers?|ing))\b)`,
    String.raw`(?:detoxif(?:iers?|y|ied|ying)(?: the)?(?: ammonia)?\b)`,
    String.raw`(?:(?:sodium )?thiosul(?:f|ph)ate\b)`,
    String.raw`(?:(?:sodium )?hydroxymethane ?sul(?:f|ph)[oi]nate\b)`,
    String.raw`(?:(?:sodium )?dithionite\b)`,
  ].join('|'),
  'gi',
);

/**
 * Ammonia binders, detoxifying conditioners and reducing dechlorinators set copper free from amine and chelated
 * products and can kill in hours: danger wherever one is noted.
 *
 * Source: [Practice].
 */
export const conditionerNoted: Rule<ConditionerNoted> = {
  about: 'an ammonia binder, detoxifying conditioner or reducing dechlorinator noted',
  codes: { 'conditioner-noted': ['danger'] },
  sources: ['Practice'],
  needs: [['note', 'signs']],
  yieldsTo: [],
  find,
  words: written,
  examples: [
    { log: daily('Cu|note', 2.25, '2.25|water conditioner added'), finds: ['danger 3 conditioner-noted'] },
    { log: daily('Cu|note', 2.25, '2.25|no conditioner used'), finds: [] },
  ],
};

function find({ log }: Treatment): readonly Found<ConditionerNoted>[] {
  const { note, signs } = log.texts;
  const found: Found<ConditionerNoted>[] = [];
  if (!anyTextFits(note, isMaybe) && !anyTextFits(signs, isMaybe)) return found;
  for (let index = 0; index < log.count; index++) {
    const noted = conditionerIn(note?.[index] ?? '') ?? conditionerIn(signs?.[index] ?? '');
    if (noted === null) continue;
    found.push({
      code: 'conditioner-noted',
      words: noted,
      severity: 'danger',
      when: log.when[index] ?? null,
      row: log.row[index] ?? null,
      source: 'Practice',
    });
  }
  return found;
}

function written({ words: noted }: ConditionerNoted): FindingWords {
  return {
    finding:
      `"${cut(noted)}" is noted: look at the fish every hour; with signs move them out or change half the water, copper-free; ` +
      `a copper test is unreliable now; add none again.`,
    why: 'Ammonia binders, detoxifying conditioners and reducing dechlorinators set copper free from amine and chelated products and can kill within hours.',
  };
}

function isMaybe(text: string): boolean {
  return maybe.test(text);
}

function conditionerIn(text: string): string | null {
  if (text === '' || !isMaybe(text)) return null;
  for (const match of text.matchAll(named)) {
    const span = { from: match.index, to: match.index + match[0].length };
    if (!isDenied(text, span) && !/\b(?:air|carbon)[ -]$/i.test(text.slice(0, span.from))) return match[0];
  }
  return null;
}
