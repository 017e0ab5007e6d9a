import { meterAccuracyOf } from './meterError.js';
import { traceHolds } from '../hold/holdTracer.js';
import { levelModel, type LevelModel } from '../level/levelModel.js';
import * as limits from '../limits/limits.js';
import type { Card } from '../log/card.js';
import type { ReadingColumns } from '../log/readingColumns.js';
import { anyTextFits } from '../log/table/anyTextFits.js';
import { copperStates, logEntries, type Log } from '../log/table/log.js';
import { waterEventsOf } from '../log/table/waterEventsOf.js';
import type { Problem } from '../result/problem.js';
import type { Result } from '../result/result.js';
import { copperMgPerLitre, copperPerRootDay, instantDays } from '../units/quantity.js';
import { isNotedSign } from './signs/isNotedSign.js';
import { signSteps, type SignText } from './signs/signSteps.js';
import type { Treatment } from './treatment.js';

/** What the engine makes of one system's log and card, up to a moment. */
export function treatmentOf(whole: Log, card: Card, asOf: number | undefined): Treatment {
  const log = asOf === undefined ? whole : logUntil(whole, asOf);
  const readings = readingsOf(log);
  const terms = {
    low: card.band.low,
    longestGap: card.longestGap,
    confirm: card.confirm,
    ...(asOf === undefined ? {} : { asOf }),
    ...(card.arrived === null ? {} : { arrived: card.arrived }),
  };
  return new LazyTreatment({
    log,
    card,
    readings,
    terms,
    trace: traceHolds(readings, terms),
    now: asOf ?? log.when[log.count - 1] ?? NaN,
    isAsked: asOf !== undefined,
  });
}

type Known = Omit<Treatment, 'events' | 'levels' | 'signs'>;

/** What costs much and not every question needs is made when it is first asked for. */
class LazyTreatment implements Treatment {
  readonly log: Treatment['log'];
  readonly card: Treatment['card'];
  readonly readings: Treatment['readings'];
  readonly terms: Treatment['terms'];
  readonly trace: Treatment['trace'];
  readonly now: number;
  readonly isAsked: boolean;
  private madeEvents: Treatment['events'] | undefined = undefined;
  private madeLevels: Treatment['levels'] | undefined = undefined;
  private madeSigns: Treatment['signs'] | undefined = undefined;

  constructor({ log, card, readings, terms, trace, now, isAsked }: Known) {
    this.log = log;
    this.card = card;
    this.readings = readings;
    this.terms = terms;
    this.trace = trace;
    this.now = now;
    this.isAsked = isAsked;
  }

  get events(): Treatment['events'] {
    return (this.madeEvents ??= waterEventsOf(this.log, this.card));
  }

  get levels(): Treatment['levels'] {
    if (this.madeLevels === undefined) {
      const model = treatmentLevels(this);
      this.madeLevels = model.ok ? model.value : null;
    }
    return this.madeLevels;
  }

  get signs(): Treatment['signs'] {
    return (this.madeSigns ??= signSteps(textsOf(this.log)));
  }
}

/** The level model of a treatment, or why it has none. */
export function treatmentLevels({ events, card }: Pick<Treatment, 'events' | 'card'>): Result<LevelModel, Problem> {
  return levelModel({
    events,
    volume: card.volume,
    strength: card.strength,
    accuracy: copperMgPerLitre(meterAccuracyOf(card)),
    percent: card.meterPercent,
    drift: copperPerRootDay(limits.drift.value * card.band.low),
  });
}

function readingsOf(log: Log): ReadingColumns {
  const when = new Float64Array(log.count);
  const low = new Float64Array(log.count);
  const row = new Uint32Array(log.count);
  let count = 0;
  for (let index = 0; index < log.count; index++) {
    if (log.copper[index] !== copperStates.reading) continue;
    when[count] = log.when[index] ?? NaN;
    low[count] = log.low[index] ?? NaN;
    row[count++] = log.row[index] ?? 0;
  }
  const { odd, zeroRows, hasBlanks } = log;
  return { count, when, low, row, odd, zeroRows, hasBlanks };
}

/** What was written about the fish, in the columns for it; from the notes, that they breathe badly or do not eat. */
function textsOf(log: Log): SignText[] {
  const { signs, note } = log.texts;
  const noted = anyTextFits(note, isNotedSign) ? note : null;
  if (signs === null && noted === null) return [];
  const known = new Map<string, boolean>();
  const isSign = (text: string): boolean => known.get(text) ?? remembered(known, text, isNotedSign(text));
  const written: SignText[] = [];
  for (let index = 0; index < log.count; index++) {
    const said = noted?.[index] ?? '';
    const parts = [signs?.[index] ?? '', said !== '' && isSign(said) ? said : ''].filter((part) => part !== '');
    if (parts.length === 0) continue;
    written.push({ when: log.when[index] ?? NaN, text: parts.join('; '), row: log.row[index] ?? 0 });
  }
  return written;
}

function remembered(known: Map<string, boolean>, text: string, reading: boolean): boolean {
  known.set(text, reading);
  return reading;
}

/** The entries of a log up to a moment; those of the same instant are not after it. */
function logUntil(log: Log, asOf: number): Log {
  let count = log.count;
  while (count > 0 && (log.when[count - 1] ?? NaN) - asOf >= instantDays) count--;
  if (count === log.count) return log;
  return logEntries(
    log,
    Uint32Array.from({ length: count }, (_, index) => index),
    (when) => !(when - asOf >= instantDays),
  );
}
