import { isHeadingText, parallelRanges, type RawRange } from '../../log/parallelRanges.js';
import { isBlankOrZero, rowTime, type TimeCells } from '../../log/rowTime.js';
import type { Problem } from '../../result/problem.js';
import { ok, refuse, type Result } from '../../result/result.js';
import { isBlank, type Cell } from '../../units/cell.js';
import { misplaced } from '../../units/parseQuantity.js';
import { shown } from '../../units/shown.js';
import type { SignText } from './signSteps.js';

interface SignRanges {
  readonly when: RawRange;
  readonly signs: RawRange;
  /** Turns what the host puts into a cell into a plain cell. */
  readonly cellOf: (raw: unknown) => Cell;
}

const columnName = /^(?:signs?|symptoms?|behaviou?r|obs|observations?|notes?|comments?)$/i;
/** Dashes alone, "none" and its like stand for an empty cell: nobody wrote anything about the fish. */
const nothingWritten = /^(?:[\s\-–—]*|none|nil|n\/?a|n\.a\.)\.?$/i;

/**
 * The texts in two ranges of the same rows. Rows without a text and a first row of headings are left out. A number is
 * repeated as text, never read as one; the 0 that some hosts send for an empty cell is none.
 *
 * Definition: see the conventions of the cell functions for times and ranges.
 */
export function readSigns({ when, signs, cellOf }: SignRanges): Result<readonly SignText[], Problem> {
  const ranges = parallelRanges({ name: 'when', range: when }, { name: 'signs', range: signs });
  if (!ranges.ok) return ranges;
  const [times = [], texts = []] = ranges.value;
  const found: SignText[] = [];
  const twoColumns = times[0]?.length === 2;
  for (let index = 0; index < texts.length; index++) {
    const [date = null, timeOfDay = null] = (times[index] ?? []).map(cellOf);
    const sign = cellOf(texts[index]?.[0]);
    if (index === 0 && isHeadingRow(date, sign)) continue;
    const text = signText({ date, timeOfDay: twoColumns ? timeOfDay : undefined }, sign, index + 1);
    if (!text.ok) return text;
    if (text.value !== null) found.push(text.value);
  }
  return ok(found);
}

/** The row's text and its time; null where nothing is written. */
function signText(time: TimeCells, sign: Cell, row: number): Result<SignText | null, Problem> {
  const when = rowTime(time, row);
  if (!when.ok) return when;
  if (typeof sign === 'object' && sign !== null) return refuse(misplaced(sign, { row }));
  const text =
    sign === null || isBlankOrZero(sign) ? '' : typeof sign === 'boolean' ? shown(sign) : String(sign).trim();
  if (nothingWritten.test(text)) return ok(null);
  if (when.value === null) return refuse({ code: 'text-without-time', row, given: shown(text) });
  return ok({ when: when.value, row, text });
}

/** "eating" heads a column too, but is left out only below a heading for the times. */
function isHeadingRow(date: Cell, sign: Cell): boolean {
  if (!isBlank(sign) && typeof sign !== 'string') return false;
  if (isBlank(date)) return typeof sign === 'string' && columnName.test(sign.trim());
  return typeof date === 'string' && isHeadingText(date);
}
