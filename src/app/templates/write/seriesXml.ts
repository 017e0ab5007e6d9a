import { type CellValue, xmlText } from '../../../sheet/index.js';
import type { ChartPlan, ChartSeries } from '../plan/templatePlan.js';
import { palette } from '../plan/looks.js';

/** What the cells of a reference hold, one after the other. */
export type ChartCells = (reference: string) => readonly CellValue[];

interface Drawing {
  readonly kind: ChartPlan['kind'];
  readonly cells: ChartCells;
}

/** One series; kinds differ in form and stroke, so that they can be told apart without colour. */
export function seriesXml(series: ChartSeries, index: number, { kind, cells }: Drawing): string {
  const name =
    `<c:tx><c:strRef><c:f>${xmlText(series.name)}</c:f><c:strCache><c:ptCount val="1"/>` +
    `<c:pt idx="0"><c:v>${xmlText(String(cells(series.name)[0] ?? ''))}</c:v></c:pt></c:strCache></c:strRef></c:tx>`;
  const start = `<c:ser><c:idx val="${index}"/><c:order val="${index}"/>${name}`;
  const up = numbers(series.up, cells);
  if (kind === 'columns') {
    const across = names(series.across, cells);
    return `${start}${look.columns}<c:invertIfNegative val="0"/>${values}<c:cat>${across}</c:cat><c:val>${up}</c:val></c:ser>`;
  }
  const across = numbers(series.across, cells);
  return `${start}${look[series.draws]}<c:xVal>${across}</c:xVal><c:yVal>${up}</c:yVal><c:smooth val="0"/></c:ser>`;
}

function numbers(reference: string, cells: ChartCells): string {
  const held = cells(reference);
  const points = held.flatMap((value, i) => (typeof value === 'number' ? [point(i, String(value))] : []));
  return (
    `<c:numRef><c:f>${xmlText(reference)}</c:f><c:numCache><c:formatCode>General</c:formatCode>` +
    `<c:ptCount val="${held.length}"/>${points.join('')}</c:numCache></c:numRef>`
  );
}

function names(reference: string, cells: ChartCells): string {
  const held = cells(reference);
  const points = held.flatMap((value, i) => (value === null || value === '' ? [] : [point(i, xmlText(String(value)))]));
  return `<c:strRef><c:f>${xmlText(reference)}</c:f><c:strCache><c:ptCount val="${held.length}"/>${points.join('')}</c:strCache></c:strRef>`;
}

const point = (index: number, value: string): string => `<c:pt idx="${index}"><c:v>${value}</c:v></c:pt>`;

const paint = (colour: string): string => `<a:solidFill><a:srgbClr val="${colour}"/></a:solidFill>`;
const noMark = '<c:marker><c:symbol val="none"/></c:marker>';
const stroke = (colour: string, width: number, dash: string): string =>
  `<c:spPr><a:ln w="${width * 12_700}" cap="flat">${paint(colour)}<a:prstDash val="${dash}"/><a:round/></a:ln></c:spPr>${noMark}`;
const diamonds =
  '<c:spPr><a:ln w="19050"><a:noFill/></a:ln></c:spPr><c:marker><c:symbol val="diamond"/><c:size val="7"/>' +
  `<c:spPr>${paint(palette.mark)}<a:ln w="9525">${paint(palette.warnInk)}</a:ln></c:spPr></c:marker>`;

const look: Readonly<Record<ChartSeries['draws'], string>> = {
  marks: diamonds,
  line: stroke(palette.deep, 1.75, 'solid'),
  thinLine: stroke(palette.heading, 0.75, 'sysDot'),
  limit: stroke(palette.warnInk, 1.25, 'lgDash'),
  columns: `<c:spPr>${paint(palette.heading)}</c:spPr>`,
};

/** The number above each column. */
const values =
  '<c:dLbls><c:numFmt formatCode="0.0;;" sourceLinked="0"/><c:spPr><a:noFill/></c:spPr><c:dLblPos val="outEnd"/>' +
  '<c:showLegendKey val="0"/><c:showVal val="1"/><c:showCatName val="0"/><c:showSerName val="0"/>' +
  '<c:showPercent val="0"/><c:showBubbleSize val="0"/></c:dLbls>';
