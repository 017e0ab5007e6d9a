import * as Plot from '@observablehq/plot';
import { markLayer, type Page } from './markLayer.js';
import { placedLabels, type Label } from './placedLabels.js';
import { plotColours } from './plotLooks.js';
import type { PlotData, PlotHold } from './plotParts.js';
import type { StripRow } from './plotFrame.js';
import { textWidth } from './textWidth.js';

const size = 11;
const barHeight = 15;
/** Least width of a bar, of a hold of one reading. [px] */
const leastWidth = 3;

/** How a hold is drawn by its standing. */
export const holdLooks: Readonly<
  Record<PlotHold['standing'], { fill: string; stroke: string; strokeDasharray: string }>
> = {
  enough: { fill: plotColours.deep, stroke: plotColours.deep, strokeDasharray: 'none' },
  running: { fill: plotColours.running, stroke: plotColours.deep, strokeDasharray: 'none' },
  'too short': { fill: plotColours.paper, stroke: plotColours.deep, strokeDasharray: '4,2.5' },
};

interface Bar {
  readonly hold: PlotHold;
  readonly x1: number;
  readonly x2: number;
  readonly text: string;
}

/** The holds as bars with their days: solid where long enough, tinted while running, outlined where too short. */
export function holdStrip({ holds }: PlotData, page: Page, { middle }: StripRow): Element[] {
  const { frame } = page;
  const bars = barsApart(holds, frame.x);
  const [y1, y2] = [middle - barHeight / 2, middle + barHeight / 2];
  const spans = bars.map(({ x1, x2 }) => ({ lane: 0, left: x1, right: x2 }));
  const inside = bars.map(({ x1, x2, text }) => x2 - x1 > textWidth(text, size) + 8);
  const beside = placedLabels(
    bars.map((bar, index) => labelOf(bar, inside[index] ?? false)),
    { left: frame.left - 2, right: frame.width - 2, lanes: 1, taken: spans },
  );
  const labels = bars.flatMap(({ hold, x1, x2, text }, index) => {
    const isInside = inside[index] ?? false;
    const left = isInside ? (x1 + x2 - textWidth(text, size)) / 2 : beside[index]?.left;
    if (left === undefined) return [];
    const isDark = isInside && hold.standing === 'enough';
    return [{ text, left, fill: isDark ? plotColours.paper : plotColours.ink }];
  });
  const none = bars.length === 0 ? ['no hold began'] : [];
  const text = { y: () => middle, textAnchor: 'start', fontSize: size } as const;
  return markLayer(
    page,
    [
      ...(['too short', 'running', 'enough'] as const).map((standing) =>
        Plot.rect(
          bars.filter(({ hold }) => hold.standing === standing),
          { x1: 'x1', x2: 'x2', y1, y2, ...holdLooks[standing], strokeWidth: 1.2, title: 'text' },
        ),
      ),
      Plot.text(labels, { ...text, x: 'left', text: 'text', fill: 'fill' }),
      Plot.text(none, { ...text, x: () => frame.left, text: (words: string) => words, fill: plotColours.quiet }),
    ],
    'pixels',
    'pixels',
  );
}

/** A hold that is no wider than a line is left out where another stands in the same place. */
function barsApart(holds: readonly PlotHold[], x: (when: number) => number): Bar[] {
  let last = -Infinity;
  return holds.flatMap((hold) => {
    const [x1, end] = [x(hold.from), x(hold.to)];
    const x2 = Math.max(end, x1 + leastWidth);
    if (x2 - last < 1 && hold.standing === 'too short') return [];
    last = x2;
    return [{ hold, x1, x2, text: `${hold.days.toFixed(1)} days` }];
  });
}

/** Beside its bar, at the right if it can; one that stands inside asks for no room. */
function labelOf({ x1, x2, text }: Bar, isInside: boolean): Label {
  const width = textWidth(text, size);
  return isInside ? { lefts: [], width } : { lefts: [x2 + 7, x1 - 7 - width], width };
}
