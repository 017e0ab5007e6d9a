import { eventKinds, type WaterEvents } from '../../log/waterEvents.js';
import { litres } from '../../units/quantity.js';
import type { Treatment, WatchedWater } from '../treatment.js';
import { treatmentLevels } from '../treatmentOf.js';
import { nextReading } from './nextReading.js';
import { type SteadyLevels, usualLossRate } from './steadyLevels.js';
import { steadyPass } from './steadyPass.js';

/** A stretch of a log that can be followed without knowing what a dose adds, and where in it an event lies. */
interface DoselessWindow {
  readonly water: WatchedWater;
  /** By the usual loss: so few readings do not show one. */
  readonly steady: SteadyLevels;
  readonly index: number;
}

/**
 * The treatment from the reading before an event to the reading after it, or to the end of the log; null where a dose
 * lies between, or no reading comes before.
 */
export function windowWithoutDoses(treatment: Treatment, index: number): DoselessWindow | null {
  const { events } = treatment;
  let first = index;
  while (first >= 0 && events.kind[first] !== eventKinds.reading) first--;
  if (first < 0) return null;
  const next = nextReading(events, index);
  const end = next < 0 ? events.count : next + 1;
  const stretch = eventsBetween(events, first, end);
  if (stretch.kind.includes(eventKinds.dose)) return null;
  const card = { ...treatment.card, volume: volumeAt(treatment, first) };
  const levels = treatmentLevels({ events: stretch, card });
  if (!levels.ok) return null;
  const { steps, course } = levels.value.path;
  const rate = usualLossRate(card);
  const pass = steadyPass({ steps, course: { rate, drift: course.drift }, scale: 1, count: stretch.count });
  const { log, signs } = treatment;
  return {
    water: { log, signs, card, events: stretch, levels: levels.value },
    steady: { ...pass, rate },
    index: index - first,
  };
}

function eventsBetween({ when, amount, detail, kind, row }: WaterEvents, from: number, to: number): WaterEvents {
  return {
    count: to - from,
    when: when.subarray(from, to),
    amount: amount.subarray(from, to),
    detail: detail.subarray(from, to),
    kind: kind.subarray(from, to),
    row: row.subarray(from, to),
  };
}

function volumeAt({ events, card }: Treatment, index: number): Treatment['card']['volume'] {
  for (let at = index; at >= 0; at--) {
    if (events.kind[at] === eventKinds.volume) return litres(events.amount[at] ?? NaN);
  }
  return card.volume;
}
