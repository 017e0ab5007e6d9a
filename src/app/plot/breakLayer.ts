import * as Plot from '@observablehq/plot';
import { aPixelApart, markLayer, type Page } from './markLayer.js';
import { placedLabels } from './placedLabels.js';
import { plotColours } from './plotLooks.js';
import type { PlotFrame } from './plotFrame.js';
import type { PlotBreak, PlotData } from './plotParts.js';
import { textWidth } from './textWidth.js';

const size = 11;
const laneHeight = 13;
const mostLanes = 3;
/** The lowest lane of labels lies so far above the levels. */
const firstLane = 11;

interface DrawnBreaks {
  readonly elements: Element[];
  /** Breaks whose label found no room. */
  readonly unnamed: number;
  /** Lanes of labels above the levels, the title of the axis in the first. */
  readonly lanes: number;
}

/** The breaks of holds: dashed rules through levels and holds, each named above where there is room. */
export function breakLayer({ breaks, untested }: PlotData, page: Page): DrawnBreaks {
  const { frame } = page;
  const rules = aPixelApart(breaks, ({ when }) => frame.x(when));
  const hours = new Map(untested.map((span) => [span.row, Math.round(span.hours)]));
  const { labels, lanes } = placedNames(rules, hours, frame);
  const lines = rules.flatMap(({ when, why }) => ruleSpans(frame).map((span) => ({ ...span, x: frame.x(when), why })));
  const rule = { x: 'x', y1: 'y1', y2: 'y2', stroke: plotColours.ink, strokeWidth: 1.1 } as const;
  const dashed = (kind: PlotBreak['why'], strokeDasharray: string): Plot.Markish =>
    Plot.ruleX(
      lines.filter(({ why }) => why === kind),
      { ...rule, strokeDasharray },
    );
  const texts = { x: 'x', y: 'y', text: 'text', textAnchor: 'start', fontSize: size, fill: plotColours.ink } as const;
  const marks = [dashed('below', '5,3'), dashed('untested', '1.5,3'), Plot.text(labels, texts)];
  return { elements: markLayer(page, marks, 'pixels', 'pixels'), unnamed: breaks.length - labels.length, lanes };
}

interface PlacedNames {
  readonly labels: readonly { readonly text: string; readonly x: number; readonly y: number }[];
  readonly lanes: number;
}

function placedNames(rules: readonly PlotBreak[], hours: ReadonlyMap<number, number>, frame: PlotFrame): PlacedNames {
  const named = rules.map((each) => {
    const text = labelOf(each, hours.get(each.row), frame.isNarrow);
    const [at, width] = [frame.x(each.when), textWidth(text, size)];
    const inside = Math.min(frame.width - width - 2, Math.max(frame.left, at - width / 2));
    return { text, width, lefts: [inside, at - width, at] };
  });
  const axisTitle = { lane: 0, left: 0, right: textWidth('Copper, mg/L', size) + 14 };
  const places = placedLabels(named, { left: 2, right: frame.width - 2, lanes: mostLanes, taken: [axisTitle] });
  const labels = named.flatMap(({ text }, index) => {
    const place = places[index];
    const y = frame.top - firstLane - (place?.lane ?? 0) * laneHeight;
    return place === null || place === undefined ? [] : [{ text, x: place.left, y }];
  });
  return { labels, lanes: places.reduce((most, place) => Math.max(most, (place?.lane ?? 0) + 1), 1) };
}

/** Through the levels and the holds, and not through the labels of the axis between the two. */
function ruleSpans({ top, bottom, rows }: PlotFrame): { y1: number; y2: number }[] {
  const holds = rows.filter(({ name }) => name === 'Holds');
  return [{ y1: top - 1, y2: bottom }, ...holds.map((row) => ({ y1: row.top, y2: row.top + row.height }))];
}

function labelOf({ why, row }: PlotBreak, hours: number | undefined, isNarrow: boolean): string {
  const cause = why === 'below' ? 'below' : hours === undefined ? 'no test' : `no test ${hours} h`;
  return isNarrow ? `${cause}, row ${row}` : `break: ${cause}, row ${row}`;
}
