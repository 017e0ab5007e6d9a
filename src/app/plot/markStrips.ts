import * as Plot from '@observablehq/plot';
import { isoFromSerial } from '../../engine/index.js';
import { aPixelApart, markLayer, type Page } from './markLayer.js';
import { placedLabels } from './placedLabels.js';
import { plotColours, plotSymbols, type PlotSymbol } from './plotLooks.js';
import type { FishMark, PlotData } from './plotParts.js';
import type { StripRow } from './plotFrame.js';
import { textWidth } from './textWidth.js';

const size = 10.5;

interface Mark {
  readonly when: number;
  readonly x: number;
  readonly told: string;
  /** Beside the mark, where there is room. */
  readonly label: string;
}

/** Doses, water changes, fish and unread cells as small marks, a line each; the mark says more when pointed at. */
export function markStrips(data: PlotData, page: Page, rows: readonly StripRow[]): Element[] {
  const { x } = page.frame;
  const rowOf = (wanted: StripRow['name']): StripRow | undefined => rows.find(({ name }) => name === wanted);
  const mark = (each: { when: number; row: number }, what: string, label = ''): Mark => {
    return { when: each.when, x: x(each.when), label, told: `${isoFromSerial(each.when)}: ${what}, row ${each.row}` };
  };
  const doses = data.doses.map((each) => mark(each, `${short(each.millilitres)} mL${riseText(each.rise)}`));
  const changes = data.changes.map((each) =>
    mark(each, `${short(each.litres)} L of water changed`, `${Math.round(each.percent)} %`),
  );
  const unread = data.unread.map((each) => mark(each, 'copper cell not read'));
  const fish = (kind: FishMark['kind']): Mark[] =>
    data.fish.filter((each) => each.kind === kind).map((each) => mark(each, fishText(each), fishText(each)));
  return [
    ...strip(page, rowOf('Doses'), [
      { marks: doses, symbol: plotSymbols.doseTick, colour: plotColours.deep, isLine: true },
    ]),
    ...strip(page, rowOf('Changes'), [{ marks: changes, symbol: plotSymbols.drop, colour: plotColours.course }]),
    ...strip(page, rowOf('Fish'), [
      { marks: fish('in'), symbol: plotSymbols.pointRight, colour: plotColours.deep },
      { marks: fish('out'), symbol: plotSymbols.pointLeft, colour: plotColours.deep },
      { marks: fish('died'), symbol: plotSymbols.cross, colour: plotColours.below, isLine: true },
    ]),
    ...strip(page, rowOf('Unread'), [
      { marks: unread, symbol: plotSymbols.cross, colour: plotColours.ink, isLine: true },
    ]),
  ];
}

interface Series {
  readonly marks: readonly Mark[];
  readonly symbol: PlotSymbol;
  readonly colour: string;
  readonly isLine?: boolean;
}

function strip(page: Page, row: StripRow | undefined, series: readonly Series[]): Element[] {
  if (row === undefined) return [];
  const thin = series.map((each) => ({ ...each, marks: aPixelApart(each.marks, ({ x }) => x) }));
  const all = thin.flatMap(({ marks }) => marks).sort((a, b) => a.x - b.x);
  const placed = placedLabels(
    all.map(({ x, label }) => ({ lefts: label === '' ? [] : [x + 8], width: textWidth(label, size) })),
    { left: 0, right: page.frame.width, lanes: 1, taken: all.map(({ x }) => ({ lane: 0, left: x - 2, right: x + 2 })) },
  );
  const labels = all.flatMap(({ label }, index) => {
    const place = placed[index];
    return place === null || place === undefined ? [] : [{ label, left: place.left }];
  });
  const y = (): number => row.middle;
  return markLayer(
    page,
    [
      ...thin.map(({ marks, symbol, colour, isLine = false }) => {
        const look = isLine ? { stroke: colour, strokeWidth: 1.5 } : { fill: colour, stroke: 'none' };
        return Plot.dot(marks, { x: 'x', y, symbol, ...look, sort: null, title: 'told' });
      }),
      Plot.text(labels, { x: 'left', y, text: 'label', textAnchor: 'start', fontSize: size, fill: plotColours.quiet }),
    ],
    'pixels',
    'pixels',
  );
}

function short(amount: number): string {
  return String(Number(amount.toFixed(1)));
}

function riseText(rise: number | null): string {
  return rise === null ? '' : ` dosed, +${String(Number(rise.toPrecision(2)))} mg/L`;
}

function fishText({ kind, count }: FishMark): string {
  return count === null ? kind : `${count} ${kind}`;
}
