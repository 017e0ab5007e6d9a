import { holdRows, type Treatment } from '../../engine/index.js';
import { levelText } from './levelText.js';
import type { PlotReading } from './plotParts.js';

/** The readings in time order, each with its place in the band and the sort of number it is. */
export function readingMarks({ readings, terms, card }: Treatment): PlotReading[] {
  return holdRows(readings, terms, card.band).map(({ when, level, status, row }, index) => {
    const odd = readings.odd.get(row);
    const low = readings.low[index] ?? NaN;
    const high = odd?.high ?? low;
    const bound = odd?.under !== undefined ? 'under' : high === Infinity ? 'over' : high > low ? 'range' : null;
    const approximate = odd?.approximate ?? false;
    const reading: Level = { low, high: high === Infinity ? null : high, level, bound, approximate };
    return { ...reading, when, row, status, text: written(reading) };
  });
}

type Level = Omit<PlotReading, 'when' | 'row' | 'status' | 'text'>;

function written({ low, high, level, bound, approximate }: Level): string {
  switch (bound) {
    case 'under':
      return `<${levelText(level)}`;
    case 'over':
      return `>${levelText(low)}`;
    case 'range':
      return `${levelText(low)}–${levelText(high ?? low)}`;
    case null:
      return `${approximate ? '~' : ''}${levelText(level)}`;
  }
}
