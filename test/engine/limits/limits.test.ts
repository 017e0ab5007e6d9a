import { limitStatus, type Limit } from '../../../src/engine/limits/limit.js';
import * as limits from '../../../src/engine/limits/limits.js';
import { afterEdges } from './afterEdges.js';
import { dosingEdges } from './dosingEdges.js';
import type { Edge, Edges } from './edge.js';
import { fishAndWaterEdges } from './fishAndWaterEdges.js';
import { holdEdges } from './holdEdges.js';
import { nowEdges } from './nowEdges.js';
import { oddsEdges } from './oddsEdges.js';
import { printed } from './printed.js';
import { recordEdges } from './recordEdges.js';

/** An edge or more of every limit: a new limit without one does not compile. */
const edges: Edges = {
  ...holdEdges,
  ...dosingEdges,
  ...afterEdges,
  ...fishAndWaterEdges,
  ...recordEdges,
  ...oddsEdges,
  ...nowEdges,
} satisfies Edges;

const names = Object.keys(edges) as (keyof typeof limits)[];
const each = names.flatMap((name) => edges[name].map((edge) => [name, edge.where, limits[name].value, edge] as const));

describe('each limit', () => {
  it('has an edge, and the number that is printed', () => {
    expect(names.length).toBeGreaterThan(100);
    for (const name of names) expect(edges[name].length).toBeGreaterThan(0);
    const table = Object.fromEntries(Object.entries<Limit>(limits).map(([name, limit]) => [name, printedAs(limit)]));
    expect(table).toEqual(printed);
  });

  it.each(each)('%s decides at its value: %s', (_, __, value, edge) => {
    expectEdge(edge, value);
  });
});

function printedAs(limit: Limit): string {
  const value = limit.value === 1 / 3 ? '1/3' : String(limit.value);
  return `${value} ${limit.unit}, ${limitStatus(limit)}`;
}

function expectEdge(edge: Edge, value: number): void {
  if ('gives' in edge) {
    expect(Math.abs(edge.gives() / value - 1)).toBeLessThan(0.01);
    return;
  }
  if ('measured' in edge) {
    const flip = flipOf(edge.answer, edge.between);
    expect(Math.abs(edge.measured(flip) / value - 1)).toBeLessThan(0.01);
    return;
  }
  const [below, above] = [edge.answer(value - edge.step), edge.answer(value + edge.step)];
  expect(below).not.toEqual(above);
  if (edge.with !== undefined) expect(edge.answer(value)).toEqual(edge.with === 'below' ? below : above);
}

/** Where an answer flips between two values, by halving. */
function flipOf(answer: (value: number) => boolean, [low, high]: readonly [number, number]): number {
  const atLow = answer(low);
  expect(answer(high)).toBe(!atLow);
  let [from, to] = [low, high];
  for (let turn = 0; turn < 40; turn++) {
    const middle = (from + to) / 2;
    if (answer(middle) === atLow) from = middle;
    else to = middle;
  }
  return (from + to) / 2;
}
