import * as Plot from '@observablehq/plot';
import { markLayer, type Page } from './markLayer.js';
import { placedLabels } from './placedLabels.js';
import { plotColours } from './plotLooks.js';
import { textWidth } from './textWidth.js';
import { timeTicks } from './timeTicks.js';

/** Least room of a label of the time axis. [px] */
const labelRoom = 54;
const size = 11;

/** The axis of time, with dates as a wall calendar has them. */
export function timeAxisLayer(page: Page): Element[] {
  const { frame } = page;
  const most = Math.max(2, Math.floor((frame.right - frame.left) / labelRoom));
  const ticks = timeTicks(frame.from, frame.to, most).map((tick) => ({ ...tick, x: frame.x(tick.when) }));
  const unders = ticks.filter(({ under }) => under !== '').reverse();
  const widths = unders.map(({ under }) => textWidth(under, size));
  // From the last on: where two do not fit, the day that begins is of more use than the one that ends.
  const placed = placedLabels(
    unders.map(({ x }, index) => ({ lefts: [x - (widths[index] ?? 0) / 2], width: widths[index] ?? 0 })),
    { left: 0, right: frame.width, lanes: 1 },
  );
  const text = { x: 'x', textAnchor: 'middle', fontSize: size, fill: plotColours.quiet } as const;
  return markLayer(
    page,
    [
      Plot.ruleX(ticks, { x: 'x', y1: frame.bottom, y2: frame.bottom + 4, stroke: plotColours.axis }),
      Plot.text(ticks, { ...text, y: () => frame.bottom + 11, text: 'label' }),
      Plot.text(
        unders.filter((_, index) => placed[index] !== null),
        { ...text, y: () => frame.bottom + 23, text: 'under' },
      ),
    ],
    'pixels',
    'pixels',
  );
}
