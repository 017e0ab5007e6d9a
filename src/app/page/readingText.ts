import { isoFromSerial } from '../../engine/index.js';
import type { PlotData, PlotReading } from '../plot/plotParts.js';

const place: Record<PlotReading['status'], string> = {
  below: 'below the band',
  'in band': 'in the band',
  above: 'above the band',
};

/** One reading as it is read out: `2026-03-04 08:00: 2.05 mg/L, in the band, hold day 3 (row 12)`. */
export function readingText(reading: PlotReading, { holds }: Pick<PlotData, 'holds'>): string {
  const { when, text, status, row } = reading;
  const hold = holds.find(({ from, to }) => from <= when && when <= to);
  const day = hold === undefined || status === 'below' ? 'no hold' : `hold day ${Math.floor(when - hold.from) + 1}`;
  return `${isoFromSerial(when)}: ${text} mg/L, ${place[status]}, ${day} (row ${row})`;
}
