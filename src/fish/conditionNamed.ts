import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import { shown } from '../units/shown.js';
import type { Condition } from './condition.js';
import { conditions } from './conditions.js';
import { matchedNames } from './matchedNames.js';
import { nameIndex } from './nameIndex.js';
import { nameWords } from './nameWords.js';
import { nearestNames } from './nearestNames.js';

const index = nameIndex(conditions, ({ name, also }) => [name, ...also]);
const longest = 80;

/** The condition that a text names. One that is not known, or two at once, is refused with the nearest ones first. */
export function conditionNamed(text: string): Result<Condition, Problem> {
  if (text.trim() === '') return refuse({ code: 'blank', at: { field: 'condition' }, kind: 'condition' });
  const words = text.length <= longest ? nameWords(text) : [];
  const [found, ...others] = named(words);
  if (found !== undefined && others.length === 0) return ok(found);
  const near = nearestNames(words, index, conditions.length).flatMap(({ entries }) => entries);
  const choices = new Set([...(found === undefined ? [] : [found, ...others]), ...near, ...conditions]);
  return refuse({
    code: 'not-a-choice',
    field: 'condition',
    given: shown(text),
    choices: [...choices].map(({ name }) => name),
  });
}

function named(words: readonly string[]): readonly Condition[] {
  return [...new Set(matchedNames(words, index).flatMap(({ name }) => name.entries))];
}
