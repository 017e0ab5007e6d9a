import * as Plot from '@observablehq/plot';
import { breakLayer } from './breakLayer.js';
import { courseLayer } from './courseLayer.js';
import { drawnReadings } from './drawnReadings.js';
import { holdStrip } from './holdStrip.js';
import { keyLayer } from './keyLayer.js';
import { levelBackLayer } from './levelBackLayer.js';
import { markLayer, type Page } from './markLayer.js';
import { markStrips } from './markStrips.js';
import { plotColours } from './plotLooks.js';
import { plotFrame } from './plotFrame.js';
import { keyLineHeight, plotKey, type KeyItem } from './plotKey.js';
import { plotNotes } from './plotNotes.js';
import type { PlotData } from './plotParts.js';
import { plotWords } from './plotWords.js';
import { readingLayer } from './readingLayer.js';
import { timeAxisLayer } from './timeAxisLayer.js';
import { untestedStrip } from './untestedStrip.js';
import { wrappedText } from './textWidth.js';

interface PlotPage {
  readonly document: Document;
  /** [px] */
  readonly width: number;
  /** Wanted; a plot with many strips and notes is higher rather than flat. [px] */
  readonly height: number;
  /** Begins the ids of the title and the description, where a page has several plots. */
  readonly id?: string;
}

/** The drawing, and where it has put moments and levels, as the plotting library's own drawings say it. */
export type DrawnPlot = SVGSVGElement & { scale(name: 'x' | 'y'): { apply(value: number): number } };

const noteSize = 10.5;
const noteHeight = 14;
const fonts = "-apple-system, 'Segoe UI', 'Liberation Sans', Arial, system-ui, sans-serif";

/**
 * A treatment as a picture: readings, the level by mass balance, the therapeutic band, holds and breaks, stretches
 * without a test, doses, water changes and fish, with a key. The same on a page and without one, in every zone.
 *
 * @param data what it shows
 * @param page the document that makes the elements, and the room there is
 */
export function drawPlot(data: PlotData, { document, width, height, id = 'plot' }: PlotPage): DrawnPlot {
  const key = plotKey(data, width);
  const keyLines = key.reduce((lines, { line }) => Math.max(lines, line + 1), 0);
  const first: Page = { document, frame: plotFrame(data, { width, height, keyHeight: 0, lanes: 1 }) };
  const drawn = { levels: first.frame.levels, readings: drawnReadings(data, first.frame).length };
  const { unnamed, lanes } = breakLayer(data, first);
  const notes = plotNotes(data, { ...drawn, unnamed });
  const lines = notes.flatMap((note) => wrappedText(note, noteSize, width - 8));
  const keyHeight = keyLines * keyLineHeight + lines.length * noteHeight + 4;
  const page = { document, frame: plotFrame(data, { width, height, keyHeight, lanes }) };
  const { x, y, levels } = page.frame;
  const svg = outer(page, id, data);
  svg.append(...layers(data, page, key), ...noteLayer(lines, page, keyLines));
  const scales = { x, y: (level: number) => y(Math.min(level, levels.high)) };
  return Object.assign(svg, { scale: (name: 'x' | 'y') => ({ apply: scales[name] }) });
}

function layers(data: PlotData, page: Page, key: readonly KeyItem[]): Element[] {
  const { rows } = page.frame;
  return [
    ...levelBackLayer(data, page),
    ...courseLayer(data, page),
    ...timeAxisLayer(page),
    ...rows.flatMap((row) => {
      if (row.name === 'Holds') return holdStrip(data, page, row);
      return row.name === 'No test' ? untestedStrip(data, page, row) : [];
    }),
    ...markStrips(data, page, rows),
    ...breakLayer(data, page).elements,
    ...readingLayer(data, page),
    ...rowNames(page),
    ...keyLayer(key, page),
  ];
}

function rowNames(page: Page): Element[] {
  const { rows, left } = page.frame;
  const style = { textAnchor: 'end', fontSize: 11, fill: plotColours.quiet } as const;
  return markLayer(
    page,
    [Plot.text(rows, { x: () => left - 7, y: 'middle', text: 'name', ...style })],
    'pixels',
    'pixels',
  );
}

function noteLayer(lines: readonly string[], page: Page, keyLines: number): Element[] {
  const top = page.frame.keyTop + keyLines * keyLineHeight + noteHeight / 2 + 2;
  const style = { textAnchor: 'start', fontSize: noteSize, fill: plotColours.quiet } as const;
  const notes = Plot.text(lines, { x: () => 4, y: (_: string, index: number) => top + index * noteHeight, ...style });
  return markLayer(page, [notes], 'pixels', 'pixels');
}

/** The outer element with its title and description. */
function outer({ document, frame }: Page, id: string, data: PlotData): SVGSVGElement {
  const { width, height } = frame;
  const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  const attributes = {
    ...{ class: 'lazaret-plot', width, height, viewBox: `0 0 ${width} ${height}`, role: 'img' },
    ...{ 'aria-labelledby': `${id}-title`, 'aria-describedby': `${id}-words` },
    ...{ 'font-family': fonts, 'font-size': 11, 'text-anchor': 'middle', fill: plotColours.ink },
  };
  for (const [name, value] of Object.entries(attributes)) svg.setAttribute(name, String(value));
  const texts = [
    ['title', 'title', 'Copper level of the treatment over time'],
    ['desc', 'words', plotWords(data)],
  ] as const;
  for (const [tag, part, text] of texts) {
    const element = document.createElementNS('http://www.w3.org/2000/svg', tag);
    element.setAttribute('id', `${id}-${part}`);
    element.textContent = text;
    svg.append(element);
  }
  return svg;
}
