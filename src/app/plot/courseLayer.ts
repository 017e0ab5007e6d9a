import * as Plot from '@observablehq/plot';
import { markLayer, type Page } from './markLayer.js';
import { plotColours } from './plotLooks.js';
import type { CoursePoint, PlotData } from './plotParts.js';
import { thinnedCourse } from './thinnedCourse.js';

/** The level by mass balance with its 95 % band, cut at the edges of the levels. */
export function courseLayer({ course }: PlotData, page: Page): Element[] {
  if (course.length < 2) return [];
  const { document, frame } = page;
  const { left, right, top, bottom } = frame;
  const points = thinnedCourse(course, Math.round(right - left));
  const window = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  const [width, height] = [right - left, bottom - top];
  const box = { x: left, y: top, width, height, viewBox: `${left} ${top} ${width} ${height}`, overflow: 'hidden' };
  for (const [name, value] of Object.entries(box)) window.setAttribute(name, String(value));
  const when = (point: CoursePoint): number => point.when;
  window.append(
    ...markLayer(page, [
      Plot.areaY(points, {
        x: when,
        y1: 'low',
        y2: 'high',
        fill: plotColours.spread,
        fillOpacity: 0.45,
      }),
      Plot.lineY(points, {
        x: when,
        y: 'expected',
        stroke: plotColours.course,
        strokeWidth: 1.4,
      }),
    ]),
  );
  return [window];
}
