import * as Plot from '@observablehq/plot';
import { levelNumber, levelText } from '../../engine/index.js';
import { markLayer, type Page } from './markLayer.js';
import { plotColours } from './plotLooks.js';
import type { PlotData } from './plotParts.js';

/** What lies under the readings: the therapeutic band with its limits named at the right, the grid, the axis of levels. */
export function levelBackLayer(data: PlotData, page: Page): Element[] {
  const { frame } = page;
  const { ticks, high: shownTop, low: shownLow } = frame.levels;
  const { low, high } = data.band;
  const [x1, x2] = [frame.from, frame.to];
  const places = digits(ticks);
  return [
    ...markLayer(page, [
      Plot.rect([0], { x1, x2, y1: Math.max(low, shownLow), y2: high ?? shownTop, fill: plotColours.zone }),
      Plot.ruleY(ticks.slice(1), { x1, x2, stroke: plotColours.grid }),
      Plot.ruleY(high === null ? [low] : [low, high], { x1, x2, stroke: plotColours.limit, strokeWidth: 1.2 }),
      Plot.ruleY([shownLow], { x1, x2, stroke: frame.floor < frame.bottom ? plotColours.grid : 'none' }),
      Plot.text(ticks, {
        x: () => x1,
        y: (level: number) => level,
        dx: -7,
        text: (level: number) => level.toFixed(places),
        textAnchor: 'end',
        fontSize: 11,
        fill: plotColours.quiet,
      }),
    ]),
    ...markLayer(page, [axisLine(page), ...limitTexts(data, page)], 'pixels', 'pixels'),
  ];
}

function axisLine({ frame }: Page): Plot.Markish {
  return Plot.ruleY([frame.bottom], { x1: frame.left, x2: frame.right, stroke: plotColours.axis });
}

const size = 11;
const lineHeight = 13;

/** The limits' names and levels at the right of the band, moved apart where the band is thin. */
function limitTexts({ band }: PlotData, { frame }: Page): Plot.Markish[] {
  const at = frame.right + 6;
  const [low, high] = [frame.y(band.low), band.high === null ? null : frame.y(band.high)];
  const lift = high === null ? 0 : Math.max(0, 2 * lineHeight + 4 - (low - high)) / 2;
  const text = frame.isNarrow ? levelNumber : levelText;
  const lines = [
    { y: low + lift, text: `low limit\n${text(band.low)}` },
    ...(high === null || band.high === null ? [] : [{ y: high - lift, text: `top\n${text(band.high)}` }]),
  ];
  const style = { x: () => at, y: 'y', text: 'text', textAnchor: 'start', fontSize: size, lineHeight: 1.15 } as const;
  return [
    Plot.text(lines, { ...style, fill: plotColours.limit }),
    Plot.text(['Copper, mg/L'], {
      x: () => (frame.isNarrow ? 6 : 10),
      y: () => frame.top - 12,
      text: (text: string) => text,
      textAnchor: 'start',
      fontSize: size,
      fontWeight: 600,
      fill: plotColours.ink,
    }),
  ];
}

/** So many digits after the point that neighbouring ticks differ. */
function digits(ticks: readonly number[]): number {
  const step = (ticks[1] ?? 1) - (ticks[0] ?? 0);
  return Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
}
