import { isoFromSerial, levelText } from '../../engine/index.js';
import type { LevelSpan } from './levelSpan.js';
import type { PlotData } from './plotParts.js';

interface Drawn {
  readonly levels: LevelSpan;
  /** Readings that have a mark of their own. */
  readonly readings: number;
  /** Breaks without a label. */
  readonly unnamed: number;
}

/** So many readings off the scale are named, the rest counted. */
const mostNamed = 2;

/** What the picture leaves out or cannot show, one sentence each. */
export function plotNotes({ readings, course, breaks }: PlotData, drawn: Drawn): string[] {
  const off = readings.filter(({ level }) => level > drawn.levels.high);
  const named = off
    .slice(0, mostNamed)
    .map(({ text, when, row }) => `${text} mg/L on ${isoFromSerial(when)} (row ${row})`);
  const leaves = course.some(({ expected }) => expected > drawn.levels.high)
    ? ' The level by mass balance goes off the scale too.'
    : '';
  const rest = off.length > mostNamed ? [`${off.length - mostNamed} more`] : [];
  return [
    ...(readings.length === 0 ? ['The log has no reading.'] : []),
    ...(off.length === 0
      ? []
      : [
          `Off the scale, drawn at its top with an arrow, above ${levelText(drawn.levels.high)}: ${[...named, ...rest].join(', ')}.${leaves}`,
        ]),
    ...(course.length > 1 || readings.length === 0
      ? []
      : ['No level by mass balance: doses without a strength on the card, or no reading to start from.']),
    ...(drawn.readings < readings.length
      ? [`Of ${readings.length} readings, the lowest and the highest in each pixel are drawn.`]
      : []),
    ...(drawn.unnamed > 0 ? [`${drawn.unnamed} of ${breaks.length} breaks are drawn without a label.`] : []),
  ];
}
