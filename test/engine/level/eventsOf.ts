import { eventKinds, type WaterEvents } from '../../../src/engine/log/waterEvents.js';

/** when [days], kind, amount, detail: a reading's high end is its low end, a change is matched, where no detail is given. */
export type Line = readonly [when: number, kind: keyof typeof eventKinds, amount: number, detail?: number];

/** A log written down as lines, in the order in which things happened. */
export function eventsOf(lines: readonly Line[]): WaterEvents {
  const usual = ([, kind, amount, detail]: Line) =>
    detail ?? (kind === 'reading' ? amount : kind === 'change' ? NaN : 0);
  return {
    count: lines.length,
    when: Float64Array.from(lines, ([when]) => when),
    kind: Uint8Array.from(lines, ([, kind]) => eventKinds[kind]),
    amount: Float64Array.from(lines, ([, , amount]) => amount),
    detail: Float64Array.from(lines, usual),
    row: Uint32Array.from(lines, (_, index) => index + 2),
  };
}
