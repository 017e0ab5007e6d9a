import type { PlotData, PlotReading } from './plotParts.js';

/** Up to so many readings each is drawn. */
const fewEnough = 600;
/** More breaks than this are kept as the lowest of their column alone. */
const mostBreaks = 100;

/**
 * Of a long log's readings, the lowest and the highest in each column of the picture, so that nothing below the band
 * vanishes, and those that ended a hold.
 *
 * @param data readings in time order
 * @param columns how many columns the picture has, at most half of the marks wanted
 */
export function thinnedReadings({ readings, breaks, from, to }: PlotData, columns: number): readonly PlotReading[] {
  if (readings.length <= fewEnough) return readings;
  const keptRows = new Set(breaks.length <= mostBreaks ? breaks.map(({ row }) => row) : []);
  const width = (to - from) / columns;
  const kept = new Set<PlotReading>();
  let column = -1;
  let lowest: PlotReading | undefined;
  let highest: PlotReading | undefined;
  for (const reading of readings) {
    const at = Math.min(columns - 1, Math.floor((reading.when - from) / width));
    if (at !== column) {
      keep(kept, lowest, highest);
      column = at;
      lowest = highest = reading;
    }
    if (lowest === undefined || reading.low < lowest.low) lowest = reading;
    if (highest === undefined || topOf(reading) > topOf(highest)) highest = reading;
    if (keptRows.has(reading.row) && reading.status === 'below') kept.add(reading);
  }
  keep(kept, lowest, highest);
  return readings.filter((reading) => kept.has(reading));
}

function keep(kept: Set<PlotReading>, ...readings: readonly (PlotReading | undefined)[]): void {
  for (const reading of readings) if (reading !== undefined) kept.add(reading);
}

function topOf({ high }: PlotReading): number {
  return high ?? Infinity;
}
