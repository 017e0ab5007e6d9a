import { refuse, ok } from '../result/result.js';
import { isBlank, type Cell } from '../units/cell.js';
import { misplaced } from '../units/parseQuantity.js';
import type { Reader } from '../units/readers/reader.js';
import { shown } from '../units/shown.js';
import type { Condition } from './condition.js';
import { conditions } from './conditions.js';
import { matchedNames } from './matchedNames.js';
import { nameIndex } from './nameIndex.js';
import { nameWords } from './nameWords.js';
import { nearestNames } from './nearestNames.js';

const index = nameIndex(conditions, ({ name, also }) => [name, ...also]);
/** Always worth offering: it is a condition too. */
const unknown = conditions.filter(({ key }) => key === 'unknown');
/** Its diseases share names with the marine ones, and are others. */
const freshWater = /\bfresh[\s-]*water\b|\bichthyophthirius\b/i;
const longest = 80;
const offered = 3;

/** The condition that a cell names. One that is not known, or two at once, is refused with the nearest ones first. */
export function conditionIn(cell: Cell): Reader<Condition> {
  return (field) => {
    if (cell === null || isBlank(cell)) return refuse({ code: 'blank', at: { field }, kind: 'condition' });
    if (typeof cell === 'object') return refuse(misplaced(cell, { field }));
    if (typeof cell !== 'string') {
      return refuse({ code: 'not-a-value', at: { field }, given: shown(cell), kind: 'condition' });
    }
    const words = cell.length <= longest ? nameWords(cell) : [];
    const named = freshWater.test(cell) ? [] : conditionsAmong(words);
    const [only] = named;
    if (only !== undefined && named.length === 1) return ok(only);
    return refuse({ code: 'not-a-choice', field, given: shown(cell), choices: choices(named, words) });
  };
}

function conditionsAmong(words: readonly string[]): readonly Condition[] {
  return [...new Set(matchedNames(words, index).flatMap(({ name }) => name.entries))];
}

function choices(named: readonly Condition[], words: readonly string[]): readonly string[] {
  const near = nearestNames(words, index, offered).flatMap(({ entries }) => entries);
  return [...new Set([...named, ...near, ...unknown, ...conditions])].map(({ name }) => name);
}
