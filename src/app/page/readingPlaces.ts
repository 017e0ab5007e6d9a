import type { DrawnPlot } from '../plot/drawPlot.js';
import type { PlotData } from '../plot/plotParts.js';

/** Where a reading stands in the plot. [px of the plot] */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** The places of the readings, in their order. */
export function readingPlaces(plot: DrawnPlot, { readings }: PlotData): Place[] {
  const [x, y] = [plot.scale('x'), plot.scale('y')];
  return readings.map(({ when, level }) => ({ x: x.apply(when), y: y.apply(level) }));
}
