import { bellReach } from './meanUnderBell.js';

/** No panel is wider than this. [final spreads] */
const widest = 3;
/** A layer thinner than this holds too little of the level's chance to matter. [final spreads] */
const thinnest = 1e-4;

/**
 * Where a curve over the level above the limit needs its panels: over the levels that all readings together leave
 * possible, thin at the limit and twice as wide each further out.
 *
 * Definition: from mean − 6.5 spreads (or 0) to mean + 6.5 spreads; a panel at u is max(u, layer) wide, at most 3 spreads.
 *
 * @param mean of the true level above the limit, given all readings [mg/L]
 * @param spread its standard deviation [mg/L]
 * @param layer how thick the layer over the limit is in which the curve changes [mg/L]
 * @param fineness 1 as a rule; 2 halves the panels
 * @returns rising edges [mg/L]
 */
export function panelEdges(given: { mean: number; spread: number; layer: number; fineness: number }): Float64Array {
  // Far from 0 a window narrower than the numbers' own grain would have no width.
  const spread = Math.max(given.spread, 1e-10 * Math.abs(given.mean));
  const from = Math.max(0, given.mean - bellReach * spread);
  const to = Math.max(given.mean + bellReach * spread, from + spread);
  const layer = Math.min(spread, Math.max(given.layer, thinnest * spread));
  const edges = [from];
  for (let at = from; at < to;) {
    at += Math.min(Math.max(at, layer), widest * spread) / given.fineness;
    edges.push(at);
  }
  return Float64Array.from(edges);
}
