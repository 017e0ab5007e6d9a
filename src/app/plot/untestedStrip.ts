import * as Plot from '@observablehq/plot';
import { markLayer, type Page } from './markLayer.js';
import { placedLabels } from './placedLabels.js';
import { plotColours } from './plotLooks.js';
import type { PlotData } from './plotParts.js';
import type { StripRow } from './plotFrame.js';
import { textWidth } from './textWidth.js';

const size = 10.5;

/** Stretches without a test as dotted lines between two ends, with their hours. */
export function untestedStrip({ untested }: PlotData, page: Page, { middle }: StripRow): Element[] {
  const { frame } = page;
  const spans = untested.map(({ from, to, hours }) => ({
    x1: frame.x(from),
    x2: frame.x(to),
    text: `${Math.round(hours)} h`,
  }));
  const taken = spans.map(({ x1, x2 }) => ({ lane: 0, left: x1, right: x2 }));
  const widths = spans.map(({ text }) => textWidth(text, size));
  const placed = placedLabels(
    spans.map(({ x1, x2 }, index) => ({ lefts: [x2 + 7, x1 - 7 - (widths[index] ?? 0)], width: widths[index] ?? 0 })),
    { left: frame.left - 2, right: frame.width, lanes: 1, taken },
  );
  const labels = spans.flatMap(({ text }, index) => {
    const place = placed[index];
    return place === null || place === undefined ? [] : [{ text, left: place.left }];
  });
  const y = (): number => middle;
  const ends = spans.flatMap(({ x1, x2 }) => [x1, x2]);
  const stroke = { stroke: plotColours.ink, strokeWidth: 1.3 };
  return markLayer(
    page,
    [
      Plot.ruleY(spans, { x1: 'x1', x2: 'x2', y, ...stroke, strokeDasharray: '1.5,2.5', title: 'text' }),
      Plot.ruleX(ends, { x: (x: number) => x, y1: middle - 4, y2: middle + 4, ...stroke }),
      Plot.text(labels, { x: 'left', y, text: 'text', textAnchor: 'start', fontSize: size, fill: plotColours.quiet }),
    ],
    'pixels',
    'pixels',
  );
}
