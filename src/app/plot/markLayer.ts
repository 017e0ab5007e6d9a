import * as Plot from '@observablehq/plot';
import type { PlotFrame } from './plotFrame.js';

export interface Page {
  readonly document: Document;
  readonly frame: PlotFrame;
}

/** How a layer counts upward: levels, or pixels of the whole picture from its top. */
type Upward = 'levels' | 'pixels';
/** How a layer counts to the right: moments, or pixels of the whole picture from its left. */
type Rightward = 'moments' | 'pixels';

/** Marks in the places of the frame, without axes or style of their own. */
export function markLayer(
  { document, frame }: Page,
  marks: readonly Plot.Markish[],
  x: Rightward = 'moments',
  y: Upward = 'levels',
): Element[] {
  const { width, height, left, right, top, floor, from, to, levels } = frame;
  const drawn = Plot.plot({
    document,
    width,
    height,
    margin: 0,
    x: x === 'pixels' ? { type: 'identity' } : { type: 'linear', domain: [from, to], range: [left, right] },
    y:
      y === 'pixels'
        ? { type: 'identity' }
        : { type: 'linear', domain: [levels.low, levels.high], range: [floor, top] },
    axis: null,
    marks: [...marks],
  });
  const layers = Array.from(drawn.children).filter(({ tagName }) => tagName.toLowerCase() !== 'style');
  // The library names each group after its kind of mark, which means nothing to a reader.
  for (const layer of layers) layer.removeAttribute('aria-label');
  return layers;
}

/** Of marks within one pixel, only the first. */
export function aPixelApart<Mark>(marks: readonly Mark[], x: (mark: Mark) => number): Mark[] {
  let last = -Infinity;
  return marks.filter((mark) => {
    if (x(mark) - last < 1) return false;
    last = x(mark);
    return true;
  });
}
