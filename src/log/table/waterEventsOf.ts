import type { Card } from '../card.js';
import { eventKinds, type WaterEvents } from '../waterEvents.js';
import { copperStates, type Log } from './log.js';
import { matchedReplacement } from './numberColumns.js';
import { rowWords } from './rowWords.js';

type Kind = keyof typeof eventKinds;

/**
 * What happened to the water, row after row: within a row the volume, the reading, then the change, then the top-off
 * and the dose, unless the row says that the reading came after the dose or after the water change.
 */
export function waterEventsOf(log: Log, card: Card): WaterEvents {
  const writer = new EventWriter(log.count * 2 + 8);
  let volume: number = card.volume;
  for (let index = 0; index < log.count; index++) {
    const at = { when: log.when[index] ?? NaN, row: log.row[index] ?? 0 };
    const said = log.numbers.volume?.[index] ?? NaN;
    if (said > 0) {
      volume = said;
      writer.add(at, 'volume', said, 0);
    }
    const words = rowWords(log, index);
    const read = (): void => addReading(writer, log, index, at);
    if (!words.afterChange && !words.afterDose) read();
    addChange(writer, log, index, at, volume, words.matched);
    if (words.afterChange && !words.afterDose) read();
    const topOff = log.numbers['top-off']?.[index] ?? NaN;
    if (topOff > 0) writer.add(at, 'topOff', topOff, 0);
    const dose = log.numbers.dose?.[index] ?? NaN;
    if (dose > 0) writer.add(at, 'dose', dose, 0);
    if (words.afterDose) read();
  }
  return writer.events();
}

interface At {
  readonly when: number;
  readonly row: number;
}

function addReading(writer: EventWriter, log: Log, index: number, at: At): void {
  if (log.copper[index] !== copperStates.reading) return;
  const level = log.odd.get(at.row);
  const low = log.low[index] ?? NaN;
  writer.add(at, 'reading', low, level?.high ?? low);
}

function addChange(writer: EventWriter, log: Log, index: number, at: At, volume: number, matched: boolean): void {
  const litres = log.numbers.change?.[index] ?? NaN;
  const share = log.changeShare?.[index] ?? NaN;
  const change = litres > 0 ? litres : share > 0 ? share * volume : NaN;
  if (!(change > 0)) return;
  const replacement = log.numbers.replacement?.[index] ?? NaN;
  const isMatched = replacement === matchedReplacement || (Number.isNaN(replacement) && matched);
  writer.add(at, 'change', Math.min(change, volume), isMatched ? NaN : Number.isNaN(replacement) ? 0 : replacement);
}

class EventWriter {
  private count = 0;
  private when: Float64Array;
  private kind: Uint8Array;
  private amount: Float64Array;
  private detail: Float64Array;
  private row: Uint32Array;

  constructor(room: number) {
    this.when = new Float64Array(room);
    this.kind = new Uint8Array(room);
    this.amount = new Float64Array(room);
    this.detail = new Float64Array(room);
    this.row = new Uint32Array(room);
  }

  add({ when, row }: At, kind: Kind, amount: number, detail: number): void {
    if (this.count === this.when.length) this.grow();
    const at = this.count++;
    this.when[at] = when;
    this.kind[at] = eventKinds[kind];
    this.amount[at] = amount;
    this.detail[at] = detail;
    this.row[at] = row;
  }

  events(): WaterEvents {
    const { count, when, kind, amount, detail, row } = this;
    return { count, when, kind, amount, detail, row };
  }

  private grow(): void {
    const room = this.when.length * 2;
    const wider = <A extends Float64Array | Uint8Array | Uint32Array>(from: A, to: A): A => (to.set(from), to);
    this.when = wider(this.when, new Float64Array(room));
    this.kind = wider(this.kind, new Uint8Array(room));
    this.amount = wider(this.amount, new Float64Array(room));
    this.detail = wider(this.detail, new Float64Array(room));
    this.row = wider(this.row, new Uint32Array(room));
  }
}
