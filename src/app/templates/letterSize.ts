/** The letters of the templates are narrower than the widest that plots reckon with. */
const narrower = 0.87;
const pixelsOfAPoint = 4 / 3;

/** The size of letters that come out as wide by the reckoning of plots as those of the templates. [px] */
export function letterSize(points: number): number {
  return points * pixelsOfAPoint * narrower;
}
