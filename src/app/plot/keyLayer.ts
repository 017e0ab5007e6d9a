import * as Plot from '@observablehq/plot';
import { holdLooks } from './holdStrip.js';
import { markLayer, type Page } from './markLayer.js';
import { plotColours, plotSymbols, type PlotSymbol } from './plotLooks.js';
import { keyLineHeight, keySize, sampleWidth, type KeyItem, type Sample } from './plotKey.js';
import { readingLooks } from './readingLayer.js';

/** The key, drawn with the very marks it explains. */
export function keyLayer(items: readonly KeyItem[], page: Page): Element[] {
  const top = page.frame.keyTop;
  const yOf = ({ line }: KeyItem): number => top + (line + 0.5) * keyLineHeight;
  const samples = items.flatMap((item) => sampleMarks(item.sample, item.left + (sampleWidth - 6) / 2, yOf(item)));
  const texts = Plot.text(items, {
    x: ({ left }: KeyItem) => left + sampleWidth,
    y: yOf,
    text: 'text',
    textAnchor: 'start',
    fontSize: keySize,
    fill: plotColours.ink,
  });
  return markLayer(page, [...samples, texts], 'pixels', 'pixels');
}

function sampleMarks(sample: Sample, x: number, y: number): Plot.Markish[] {
  switch (sample) {
    case 'in band':
    case 'below':
    case 'above':
      return [filled(readingLooks[sample].symbol, readingLooks[sample].colour, x, y)];
    case 'open':
      return [open(x, y)];
    case 'bound':
      return [arrow(x, y - 4), open(x, y - 4)];
    case 'course':
      return [box(x, y, { fill: plotColours.spread, fillOpacity: 0.45 }), line(x, y, plotColours.course, 'none')];
    case 'zone':
      return [box(x, y, { fill: plotColours.zone, stroke: plotColours.limit })];
    case 'enough':
    case 'running':
    case 'too short':
      return [box(x, y, { ...holdLooks[sample], strokeWidth: 1.2 })];
    case 'break below':
    case 'break untested':
      return [upright(x, y, sample === 'break below' ? '5,3' : '1.5,3')];
    case 'dose':
      return [stroked(plotSymbols.doseTick, plotColours.deep, x, y)];
    case 'change':
      return [filled(plotSymbols.drop, plotColours.course, x, y)];
    case 'in':
      return [filled(plotSymbols.pointRight, plotColours.deep, x, y)];
    case 'out':
      return [filled(plotSymbols.pointLeft, plotColours.deep, x, y)];
    case 'died':
      return [stroked(plotSymbols.cross, plotColours.below, x, y)];
    case 'unread':
      return [stroked(plotSymbols.cross, plotColours.ink, x, y)];
  }
}

const half = 9;
const one = [0];

function filled(symbol: PlotSymbol, fill: string, x: number, y: number): Plot.Markish {
  return Plot.dot(one, { x: () => x, y: () => y, symbol, fill, stroke: 'none' });
}

function stroked(symbol: PlotSymbol, stroke: string, x: number, y: number): Plot.Markish {
  return Plot.dot(one, { x: () => x, y: () => y, symbol, stroke, strokeWidth: 1.5 });
}

function open(x: number, y: number): Plot.Markish {
  const look = { fill: plotColours.paper, stroke: plotColours.inBand, strokeWidth: 1.6 };
  return Plot.dot(one, { x: () => x, y: () => y, symbol: plotSymbols.circle, ...look });
}

function arrow(x: number, y: number): Plot.Markish {
  const look = { shape: 'arrow', anchor: 'start', length: 12, rotate: 180, strokeWidth: 1.4 } as const;
  return Plot.vector(one, { x: () => x, y: () => y, ...look, stroke: plotColours.inBand });
}

function line(x: number, y: number, stroke: string, strokeDasharray: string): Plot.Markish {
  return Plot.ruleY(one, { x1: x - half, x2: x + half, y: () => y, stroke, strokeWidth: 1.4, strokeDasharray });
}

function upright(x: number, y: number, strokeDasharray: string): Plot.Markish {
  return Plot.ruleX(one, {
    x: () => x,
    y1: y - 7,
    y2: y + 7,
    stroke: plotColours.ink,
    strokeWidth: 1.1,
    strokeDasharray,
  });
}

function box(x: number, y: number, look: Plot.RectOptions): Plot.Markish {
  return Plot.rect(one, { x1: x - half, x2: x + half, y1: y - 5, y2: y + 5, ...look });
}
