import { eventKinds, type WaterEvents } from '../log/waterEvents.js';

/** Water that has evaporated and is not yet topped off. */
interface Evaporated {
  /** Just before each event and right after it. [L] */
  readonly before: Float64Array;
  readonly after: Float64Array;
  /** What goes on evaporating after the last event [L/day], up to `most` missing [L]. */
  readonly rate: number;
  readonly most: number;
}

/**
 * Water that is missing from the system at each event.
 *
 * lost(t) = amount·(t − t₀) ÷ (t₁ − t₀), from the top-off before, or the first event, at t₀ to the top-off of that amount at t₁
 * after the last top-off: lost(t) = rate·(t − t₀), rate = all that was topped off ÷ days from the first event to the last
 *   top-off, but not more than the largest top-off
 *
 * Basis: even evaporation; a top-off replaces just what evaporated; the system is full at the first event; a water
 *   change gives back as many litres as it takes.
 * Validity: events in time order. A top-off at the very time of the one before finds nothing missing.
 * Definition: a straight line between top-offs; without a top-off in the log nothing is known to evaporate.
 *
 * @param events of one system
 * @returns litres missing before and after each event, and how it goes on [L, L/day]
 */
export function evaporated(events: WaterEvents): Evaporated {
  const { count, when, kind, amount } = events;
  const before = new Float64Array(count);
  const after = new Float64Array(count);
  const first = when[0] ?? NaN;
  let since = first;
  let from = 0;
  let total = 0;
  let most = 0;
  for (let index = 0; index < count; index++) {
    if (kind[index] !== eventKinds.topOff) continue;
    const added = amount[index] ?? NaN;
    const span = (when[index] ?? NaN) - since;
    const slope = span > 0 ? added / span : 0;
    for (let at = from; at <= index; at++) before[at] = after[at] = slope * ((when[at] ?? NaN) - since);
    after[index] = 0;
    total += added;
    most = Math.max(most, added);
    since = when[index] ?? NaN;
    from = index + 1;
  }
  const rate = since > first ? total / (since - first) : 0;
  for (let at = from; at < count; at++) {
    before[at] = after[at] = Math.min(most, rate * ((when[at] ?? NaN) - since));
  }
  return { before, after, rate, most };
}
