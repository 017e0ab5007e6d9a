import type { PlotData } from './plotParts.js';

export interface LevelSpan {
  readonly low: number;
  readonly high: number;
  readonly ticks: readonly number[];
}

/** A reading further over the band than this share of its top is off the scale, unless one in four is. */
const overShare = 1.6;
/** Above a band without a top so much of its low limit is shown. */
const openShare = 1.3;
const fewestTicks = 4;

/**
 * What levels the plot shows: all of them, but a few far above the band (a slip of the pen, another unit) must not press
 * the rest flat.
 */
export function levelSpan({ readings, course, band }: Pick<PlotData, 'readings' | 'course' | 'band'>): LevelSpan {
  const top = band.high ?? band.low * openShare;
  const tops = readings.map(({ high, level }) => high ?? level).sort((a, b) => a - b);
  const third = tops[Math.floor((tops.length - 1) * 0.75)] ?? 0;
  const limit = Math.max(top * overShare, third * 1.15);
  const expected = course.map((point) => point.expected);
  const wanted = Math.max(top * 1.08, shownTop(tops, limit), shownTop(expected, limit));
  const lows = readings.map(({ low, level, bound }) => (bound === 'under' ? level : low));
  const lowest = [...lows, ...expected].reduce((a, b) => Math.min(a, b), band.low);
  // Where all levels lie near the band, 0 would be far away and the band thin.
  const from = lowest > band.low * 0.6 ? Math.max(0, lowest - 0.35 * (wanted - lowest)) : 0;
  const step = tickStep((wanted - from) / fewestTicks);
  const low = Math.floor(from / step + 1e-9) * step;
  const high = Math.ceil(wanted / step - 1e-9) * step;
  const count = Math.round((high - low) / step);
  return { low, high, ticks: Array.from({ length: count + 1 }, (_, index) => low + index * step) };
}

/** The highest of what is not off the scale, and the limit itself where something is. */
function shownTop(levels: readonly number[], limit: number): number {
  return levels.reduce((highest, level) => Math.max(highest, Math.min(level, limit)), 0);
}

/** 1, 2 or 5 times a power of ten, not more than asked for. */
function tickStep(most: number): number {
  const power = 10 ** Math.floor(Math.log10(most));
  return power * ([5, 2, 1].find((each) => each * power <= most) ?? 1);
}
