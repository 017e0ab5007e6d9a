import type { NewFile } from 'excelize-wasm';
import { done } from './done.js';
import type { Excelize } from './loadExcelize.js';
import type { SheetPlan } from './templatePlan.js';

/** The frame of each chart in its sheet: place, size, name and text alternative. What is drawn in it is put in afterwards. */
export function writeChartFrames(file: NewFile, { name, charts = [] }: SheetPlan, excelize: Excelize): void {
  for (const chart of charts) {
    const frame = {
      Type: chart.kind === 'scatter' ? excelize.Scatter : excelize.Col,
      Series: chart.series.map(({ across, up }) => ({ Categories: across, Values: up })),
      Format: { AltText: chart.alt, Name: chart.name },
      Dimension: { Width: chart.size.width, Height: chart.size.height },
    };
    done(file.AddChart(name, chart.at, frame), `${name}!${chart.at}`);
  }
}
