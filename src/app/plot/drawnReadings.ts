import type { PlotFrame } from './plotFrame.js';
import type { PlotData, PlotReading } from './plotParts.js';
import { thinnedReadings } from './thinnedReadings.js';

/** Half of the marks of a long log at most. */
const mostColumns = 700;

/** The readings that have a mark of their own in a picture. */
export function drawnReadings(data: PlotData, { left, right }: PlotFrame): readonly PlotReading[] {
  return thinnedReadings(data, Math.min(mostColumns, Math.round(right - left)));
}
