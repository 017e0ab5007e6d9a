import type { Card } from '../card.js';
import { eventKinds, type WaterEvents } from '../waterEvents.js';
import { copperStates, type Log } from './log.js';
import { rowWords } from './rowWords.js';

/**
 * What happened to the water, row after row: within a row the volume, the reading, then the change, then the top-off
 * and the dose, unless the row says that the reading came after the dose or after the water change.
 */
export function waterEventsOf(log: Log, card: Card): WaterEvents {
  const writer = new EventWriter(log);
  const { volume: volumes, 'top-off': topOffs, dose: doses } = log.numbers;
  const wordsOf = rowWords(log);
  let volume: number = card.volume;
  for (let index = 0; index < log.count; index++) {
    writer.entry = index;
    const said = volumes?.[index] ?? 0;
    if (said > 0) {
      volume = said;
      writer.add(eventKinds.volume, said, 0);
    }
    const words = wordsOf(index);
    if (!words.afterChange && !words.afterDose) writer.addReading();
    const change = changeIn(log, index, volume, words.matched);
    if (change !== null) writer.addChange(change);
    if (words.afterChange && !words.afterDose) writer.addReading();
    const topOff = topOffs?.[index] ?? 0;
    if (topOff > 0) writer.add(eventKinds.topOff, topOff, 0);
    const dose = doses?.[index] ?? 0;
    if (dose > 0 && !isInNewWater(dose, change, card, writer.lastLevel)) writer.add(eventKinds.dose, dose, 0);
    if (words.afterDose) writer.addReading();
  }
  return writer.events();
}

interface Change {
  readonly litres: number;
  /** [mg/L] */
  readonly replacement: number | 'matched';
}

function changeIn(log: Log, index: number, volume: number, matched: boolean): Change | null {
  const written = log.numbers.change?.[index] ?? 0;
  const share = log.changeShare?.[index] ?? 0;
  const litres = written > 0 ? written : share > 0 ? share * volume : 0;
  if (litres === 0) return null;
  return { litres: Math.min(litres, volume), replacement: replacementIn(log, index, matched) };
}

function replacementIn(log: Log, index: number, matched: boolean): Change['replacement'] {
  if (log.replacementMatched?.[index] === 1) return 'matched';
  const level = log.numbers.replacement?.[index] ?? NaN;
  if (!Number.isNaN(level)) return level;
  return matched ? 'matched' : 0;
}

/** How near a dose must be to what the new water needs. */
const nearShare = 0.3;

/**
 * The dose in the row of a matched change may be the one that matched it: it is where it brings about as much copper as
 * the new water needs, and counting it once more would be a mistake.
 */
function isInNewWater(dose: number, change: Change | null, { strength }: Card, level: number): boolean {
  if (change?.replacement !== 'matched' || strength === null || Number.isNaN(level)) return false;
  const needed = change.litres * level;
  return Math.abs(dose * strength - needed) <= nearShare * needed;
}

/** Fills the columns of events, entry after entry of the log. */
class EventWriter {
  /** The entry of the log whose events come next. */
  entry = 0;
  /** The last reading so far. [mg/L] */
  lastLevel = NaN;
  private count = 0;
  private when: Float64Array;
  private kind: Uint8Array;
  private amount: Float64Array;
  private detail: Float64Array;
  private row: Uint32Array;

  constructor(private readonly log: Log) {
    const room = log.count * 2 + 8;
    this.when = new Float64Array(room);
    this.kind = new Uint8Array(room);
    this.amount = new Float64Array(room);
    this.detail = new Float64Array(room);
    this.row = new Uint32Array(room);
  }

  add(kind: number, amount: number, detail: number): void {
    if (this.count === this.when.length) this.grow();
    const at = this.count++;
    this.when[at] = this.log.when[this.entry] ?? NaN;
    this.kind[at] = kind;
    this.amount[at] = amount;
    this.detail[at] = detail;
    this.row[at] = this.log.row[this.entry] ?? 0;
  }

  addChange({ litres, replacement }: Change): void {
    this.add(eventKinds.change, litres, replacement === 'matched' ? NaN : replacement);
  }

  addReading(): void {
    const { copper, low, odd, row } = this.log;
    if (copper[this.entry] !== copperStates.reading) return;
    const lowEnd = low[this.entry] ?? NaN;
    this.lastLevel = lowEnd;
    const level = odd.size === 0 ? undefined : odd.get(row[this.entry] ?? 0);
    this.add(eventKinds.reading, lowEnd, level?.high ?? lowEnd);
  }

  events(): WaterEvents {
    const { count, when, kind, amount, detail, row } = this;
    return { count, when, kind, amount, detail, row };
  }

  private grow(): void {
    const room = this.when.length * 2;
    const wider = <A extends Float64Array | Uint8Array | Uint32Array>(from: A, to: A): A => {
      to.set(from);
      return to;
    };
    this.when = wider(this.when, new Float64Array(room));
    this.kind = wider(this.kind, new Uint8Array(room));
    this.amount = wider(this.amount, new Float64Array(room));
    this.detail = wider(this.detail, new Float64Array(room));
    this.row = wider(this.row, new Uint32Array(room));
  }
}
