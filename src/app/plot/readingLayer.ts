import * as Plot from '@observablehq/plot';
import { isoFromSerial } from '../../engine/index.js';
import { drawnReadings } from './drawnReadings.js';
import { markLayer, type Page } from './markLayer.js';
import { plotColours, plotSymbols, type PlotSymbol } from './plotLooks.js';
import type { PlotData, PlotReading } from './plotParts.js';

/** Shape and colour of a reading by where it stands. */
export const readingLooks: Readonly<Record<PlotReading['status'], { symbol: PlotSymbol; colour: string }>> = {
  'in band': { symbol: plotSymbols.circle, colour: plotColours.inBand },
  below: { symbol: plotSymbols.triangleDown, colour: plotColours.below },
  above: { symbol: plotSymbols.diamond, colour: plotColours.above },
};

/** With more readings in the band than this their marks are small, and the others stand out. */
const dense = 250;
/** The readings: filled, or open where they are bounds, ranges or approximate; bounds with an arrow the way they point. */
export function readingLayer(data: PlotData, page: Page): Element[] {
  const readings = drawnReadings(data, page.frame);
  const top = page.frame.levels.high;
  const at = { x: 'when', y: ({ level }: PlotReading) => Math.min(level, top) } as const;
  const stroke = ({ status }: PlotReading): string => readingLooks[status].colour;
  const arrows = { ...at, shape: 'arrow', anchor: 'start', length: 12, stroke, strokeWidth: 1.4 } as const;
  const marks = [
    Plot.ruleX(
      readings.filter(({ bound }) => bound === 'range'),
      { x: 'when', y1: 'low', y2: ({ high }: PlotReading) => Math.min(high ?? top, top), stroke, strokeWidth: 1.6 },
    ),
    Plot.vector(
      readings.filter(({ bound }) => bound === 'under'),
      { ...arrows, rotate: 180 },
    ),
    Plot.vector(
      readings.filter(({ bound, level }) => bound === 'over' || level > top),
      arrows,
    ),
    ...(['in band', 'above', 'below'] as const).flatMap((status) =>
      [false, true].map((isOpen) => {
        const own = readings.filter((reading) => reading.status === status && isOpenMark(reading) === isOpen);
        const isSmall = status === 'in band' && own.length > dense;
        const look = readingLooks[status];
        return dots(own, { ...at, ...look, ...(isSmall ? { symbol: plotSymbols.smallCircle } : {}), isOpen, isSmall });
      }),
    ),
  ];
  return markLayer(page, marks);
}

function isOpenMark({ bound, approximate }: PlotReading): boolean {
  return bound !== null || approximate;
}

interface Look {
  readonly x: 'when';
  readonly y: (reading: PlotReading) => number;
  readonly symbol: PlotSymbol;
  readonly colour: string;
  readonly isOpen: boolean;
  readonly isSmall: boolean;
}

function dots(readings: readonly PlotReading[], { x, y, symbol, colour, isOpen, isSmall }: Look): Plot.Markish {
  return Plot.dot(readings, {
    x,
    y,
    symbol,
    sort: null,
    fill: isOpen ? plotColours.paper : colour,
    stroke: isOpen ? colour : isSmall ? 'none' : plotColours.paper,
    strokeWidth: isOpen ? (isSmall ? 1 : 1.6) : 0.7,
    title: ({ when, text, status, row }: PlotReading) => `${isoFromSerial(when)}: ${text} mg/L, ${status}, row ${row}`,
    render: (index, scales, values, dimensions, context, next) => {
      const group = next?.(index, scales, values, dimensions, context) ?? null;
      index.forEach((of, at) => name(group?.children[at], readings[of]));
      return group;
    },
  });
}

/** So that a page can find the mark of a reading. */
function name(mark: Element | undefined, reading: PlotReading | undefined): void {
  if (mark === undefined || reading === undefined) return;
  const { row, when, level, status } = reading;
  const told = { class: 'reading', 'data-row': row, 'data-when': when, 'data-level': level, 'data-status': status };
  for (const [attribute, value] of Object.entries(told)) mark.setAttribute(attribute, String(value));
}
