import { heldDays } from '../hold/heldFrom.js';
import { creditedDays } from '../hold/holdTerms.js';
import * as limits from '../limits/limits.js';
import { instantDays } from '../units/quantity.js';
import { countedHolds, type CountedHold } from './countedHolds.js';
import { slipRows } from './slipRows.js';
import type { Treatment } from './treatment.js';

/** A hold that was ended on purpose before it was long enough. */
interface StoppedHold {
  readonly counted: CountedHold;
  /** Of the row that says so, else of the first reading below. */
  readonly row: number;
  /** [serial day] */
  readonly when: number;
  /** To the row that says so, at most 36 h past the last test; else to the last test not below. [days] */
  readonly days: number;
  /** A row says so; else the readings show it. */
  readonly said: boolean;
  /** The last reading where the readings show it. [mg/L] */
  readonly level: number | null;
}

const telling = /copper|\bcu\b|treatment|quarantine|\bhold\b|carbon|resin/i;
const stopWords = new RegExp(
  [
    /\b(?:copper|cu)\b.{0,12}\b(?:out|removed|removal|stopped|ended|finished|done)\b/,
    /\b(?:remov(?:ed?|ing)|stop(?:ped|ping)?|end(?:ed|ing)?|finish(?:ed|ing)?|took|taking|taken)\b.{0,12}\b(?:copper|cu|treatment|quarantine|hold)\b/,
    /\b(?:treatment|quarantine|hold)\b.{0,12}\b(?:over|done|complete|completed|ended|finished|stopped)\b/,
  ]
    .map(({ source }) => source)
    .join('|'),
  'i',
);
/** These may as well be a mistake: they count where the level shows that copper left. */
const removers =
  /\b(?:carbon|resin)\b.{0,20}\b(?:in|on|added|running|started)\b|\b(?:added|put|started|running|fresh|new)\b.{0,12}\b(?:carbon|resin)\b/i;
const notStopped = /\b(?:not|don'?t|never|no|before|until|without|tomorrow|will)\b/i;

/**
 * The last hold, where it was too short and the copper was taken out: a row at its end or after it says so, or the
 * readings after it fall below half of the low limit and do not come back.
 */
export function stoppedHold(treatment: Treatment): StoppedHold | null {
  const holds = countedHolds(treatment);
  const counted = holds[holds.length - 1];
  if (counted === undefined || counted.isEnough || counted.hold.endedBy.kind === 'untested') return null;
  const level = levelWithoutCopper(treatment, counted);
  const said = saidToStop(treatment, counted, level !== null);
  if (said === null && level === null) return null;
  const { endedBy } = counted.hold;
  const row = said?.row ?? (endedBy.kind === 'below' ? endedBy.row : 0);
  const when = said?.when ?? counted.end;
  const held = heldDays(counted.hold, treatment.terms.arrived);
  const until = Math.min(when, counted.end, counted.hold.to + creditedDays);
  const days = said === null ? held : Math.max(held, until - counted.from);
  return { counted, row, when, days, said: said !== null, level };
}

/** The first row from the hold's last reading on that says so. */
function saidToStop({ log }: Treatment, { hold }: CountedHold, isShown: boolean): { row: number; when: number } | null {
  for (let index = log.count - 1, said = -1; index >= -1; index--) {
    const when = index < 0 ? -Infinity : (log.when[index] ?? NaN);
    if (when < hold.to - instantDays) return said < 0 ? null : { row: log.row[said] ?? 0, when: log.when[said] ?? NaN };
    const text = log.texts.note?.[index] ?? '';
    if (text === '' || !telling.test(text) || notStopped.test(text)) continue;
    if (stopWords.test(text) || (isShown && removers.test(text))) said = index;
  }
  return null;
}

function levelWithoutCopper(treatment: Treatment, { hold }: CountedHold): number | null {
  const { readings, terms } = treatment;
  if (hold.endedBy.kind !== 'below') return null;
  const last = highEnd(treatment, readings.count - 1);
  const readingsAfter = readings.count - 1 - hold.lastIndex;
  const shown =
    last < terms.low * limits.copperOut.value || (readingsAfter >= 2 && last < terms.low * limits.copperLeaving.value);
  return shown && !slipRows(treatment).has(hold.endedBy.row) ? last : null;
}

/** Under a bound the level may be anything up to it. */
function highEnd({ readings }: Treatment, index: number): number {
  const odd = readings.odd.get(readings.row[index] ?? 0);
  const high = odd?.under ?? odd?.high ?? Infinity;
  return high === Infinity ? (readings.low[index] ?? NaN) : high;
}
