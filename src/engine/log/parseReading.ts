import type { Place, Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import type { Cell } from '../units/cell.js';
import { isUnclearComma } from '../units/decimalText.js';
import { misplaced } from '../units/parseQuantity.js';
import { shown } from '../units/shown.js';
import { dimensions } from '../dimensions/dimensions.js';
import { highestLevel } from '../units/readers/quantityReaders.js';
import type { Level, Reading } from './reading.js';

const number = String.raw`[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:e[+-]?\d+)?`;
const unit = String.raw`[a-z%][a-z/% ]*?`;
const approximately = String.raw`(?:\s*(\?|ish))?`;
/** One number, or both ends of a range, or two tests of one sample; each may have its unit, a `?` or "ish". */
const ends = new RegExp(
  `^(${number})${approximately}\\s*(${unit})?${approximately}(?:\\s*([-/])\\s*(${number})\\s*(${unit})?${approximately})?$`,
);
/** The factor of a diluted sample; the unit may stand before it or behind. */
const dilution = /^(.*\S)\s*[x*]\s*(\d+(?:[.,]\d+)?)\s*((?:mg|ug)\/l|ppm|ppb)?$/;

/** No reading is longer; a paragraph pasted into the column is refused before any pattern looks at it. */
const longestReading = 100;

/**
 * A copper cell as people write it: a number, text with or without a unit, `<0.05`, `>5.0`, `~2.1`, `about 2.1`, `ca. 2.1`, `2.1ish`, `2.1?`,
 * `2.0-2.25`, `0.19/0.20`, `1.05 x2` (a diluted sample), `void 1.62`. Blank, `none` and `-` mean no test.
 *
 * Definition: a number is both ends at once, `<x` is 0 to x, `>x` is x upward; a dilution multiplies both ends.
 *
 * @param cell the cell
 * @param at where it stands, for the refusal
 * @returns the ends of the level [mg/L]
 */
export function parseReading(cell: Cell, at: Place): Result<Reading, Problem> {
  if (cell === null) return ok({ kind: 'untested' });
  if (typeof cell === 'number') return withinLimits(exactly(cell), { at, given: shown(cell), bare: true });
  if (typeof cell === 'boolean') return refuse({ code: 'not-a-reading', at, given: shown(cell) });
  if (typeof cell === 'object') return refuse(misplaced(cell, at));
  return parseText(cell, at);
}

function parseText(text: string, at: Place): Result<Reading, Problem> {
  const given = shown(text);
  if (text.length > longestReading && text.trim() !== '') return refuse({ code: 'not-a-reading', at, given });
  const plain = spelledPlainly(text);
  if (plain === '' || plain === 'none' || plain === '-') return ok({ kind: 'untested' });
  const aside = /^void\b[\s:]*(.*)$/.exec(plain);
  if (aside !== null) {
    const level = levelIn(aside[1] ?? '', at, given);
    return level.ok ? ok({ kind: 'void' }) : level;
  }
  const level = levelIn(plain, at, given);
  return level.ok ? withinLimits(level.value, { at, given, bare: !/[a-z*]/.test(plain.replace(/ish/g, '')) }) : level;
}

/** One spelling for the dashes, signs and letters that look alike. */
function spelledPlainly(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .replace(/\u00d7/g, 'x')
    .replace(/\u2248/g, '~')
    .replace(/[\u2264\u2265]|[<>]=/g, (sign) => (sign === '\u2264' || sign === '<=' ? '<' : '>'))
    .replace(/[\u00b5\u03bc]/g, 'u')
    .replace(/\s+/g, ' ')
    .replace(/^(?:about|around|approx\.?|circa|ca?\.?) ?(?=[\d.,])/, '~');
}

function levelIn(text: string, at: Place, given: string): Result<Level, Problem> {
  const diluted = dilution.exec(text);
  const factor = diluted === null ? 1 : Number((diluted[2] ?? '').replace(',', '.'));
  const undiluted = diluted === null ? text : `${diluted[1] ?? ''} ${diluted[3] ?? ''}`.trim();
  const head = /^(~|<|>)?\s*(.*)$/.exec(undiluted);
  const sign = head?.[1];
  const match = ends.exec(head?.[2] ?? '');
  if (match === null || factor < 1 || !Number.isFinite(factor)) return refuse({ code: 'not-a-reading', at, given });
  const [, first = '', doubt, firstUnit, doubtAfterUnit, separator, second, secondUnit, secondDoubt] = match;
  const bound = sign === '<' || sign === '>';
  if (bound && separator !== undefined) return refuse({ code: 'not-a-reading', at, given });
  const from = inMilligramsPerLitre(first, firstUnit ?? secondUnit, at, given);
  if (!from.ok) return from;
  const to = second === undefined ? from : inMilligramsPerLitre(second, secondUnit ?? firstUnit, at, given);
  if (!to.ok) return to;
  const approximate = sign === '~' || (doubt ?? doubtAfterUnit ?? secondDoubt) !== undefined;
  const low = Math.min(from.value, to.value) * factor;
  const high = Math.max(from.value, to.value) * factor;
  if (sign === '<') return ok({ kind: 'level', low: Math.min(low, 0), high, approximate, under: high });
  return ok({ kind: 'level', low, high: sign === '>' ? Infinity : high, approximate });
}

function inMilligramsPerLitre(
  text: string,
  unitText: string | undefined,
  at: Place,
  given: string,
): Result<number, Problem> {
  if (isUnclearComma(text)) return refuse({ code: 'three-digits-after-comma', at, given });
  const value = Number(text.replace(',', '.'));
  if (unitText === undefined) return ok(value);
  const { convert, known } = dimensions.level;
  const key = unitText.replace(/ /g, '');
  const inUnit = convert.get(key);
  return inUnit === undefined ? refuse({ code: 'unknown-unit', at, given, known }) : ok(inUnit(value));
}

interface Written {
  readonly at: Place;
  readonly given: string;
  readonly bare: boolean;
}

function withinLimits(level: Level, { at, given, bare }: Written): Result<Reading, Problem> {
  if (level.low < 0) return refuse({ code: 'reading-negative', at, given });
  const top = level.high === Infinity ? level.low : level.high;
  return top <= highestLevel ? ok(level) : refuse({ code: 'reading-too-high', at, given, bare });
}

function exactly(value: number): Level {
  return { kind: 'level', low: value, high: value, approximate: false };
}
