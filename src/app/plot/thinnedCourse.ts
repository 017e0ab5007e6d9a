import type { CoursePoint } from './plotParts.js';

/** A column with more points than this is drawn by its lowest and its highest. */
const most = 4;

/** The course of a long log, column by column of the picture: what happens within one pixel is its lowest and its highest. */
export function thinnedCourse(course: readonly CoursePoint[], columns: number): readonly CoursePoint[] {
  const first = course[0];
  const last = course[course.length - 1];
  if (first === undefined || last === undefined || course.length <= most * columns) return course;
  const width = (last.when - first.when) / columns;
  const thin: CoursePoint[] = [];
  let inColumn: CoursePoint[] = [];
  let column = 0;
  for (const point of course) {
    const at = Math.min(columns - 1, Math.floor((point.when - first.when) / width));
    if (at !== column) {
      thin.push(...drawn(inColumn));
      inColumn = [];
      column = at;
    }
    inColumn.push(point);
  }
  return [...thin, ...drawn(inColumn)];
}

function drawn(points: readonly CoursePoint[]): readonly CoursePoint[] {
  const [first] = points;
  const last = points[points.length - 1];
  if (first === undefined || last === undefined || points.length <= most) return points;
  let [lowest, highest] = [first, first];
  let [low, high] = [first.low, first.high];
  for (const point of points) {
    if (point.expected < lowest.expected) lowest = point;
    if (point.expected > highest.expected) highest = point;
    low = Math.min(low, point.low);
    high = Math.max(high, point.high);
  }
  const inOrder = lowest.when <= highest.when ? [lowest, highest] : [highest, lowest];
  return [{ ...first, low, high }, ...inOrder.map((point) => ({ ...point, low, high })), { ...last, low, high }];
}
