import { xmlText } from '../../../sheet/index.js';
import type { ChartAxis, ChartPlan } from '../plan/templatePlan.js';
import { fontFamily, palette } from '../plan/looks.js';
import { seriesXml, type ChartCells } from './seriesXml.js';

const namespaces =
  'xmlns:c="http://schemas.openxmlformats.org/drawingml/2006/chart" ' +
  'xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main" ' +
  'xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"';
const paint = (colour: string): string => `<a:solidFill><a:srgbClr val="${colour}"/></a:solidFill>`;
const stroke = (colour: string): string => `<a:ln w="9525">${paint(colour)}</a:ln>`;

/**
 * The drawing of a chart, with the values of its cells beside their references for programs that do not look them up. The
 * writer's own drawing takes the numbers across for texts and prints its labels in a grey too light to read.
 */
export function chartXml(plan: ChartPlan, cells: ChartCells): string {
  const series = plan.series.map((one, index) => seriesXml(one, index, { kind: plan.kind, cells })).join('');
  const axes = '<c:axId val="1"/><c:axId val="2"/>';
  const drawn =
    plan.kind === 'scatter'
      ? `<c:scatterChart><c:scatterStyle val="lineMarker"/><c:varyColors val="0"/>${series}${axes}</c:scatterChart>`
      : '<c:barChart><c:barDir val="col"/><c:grouping val="clustered"/><c:varyColors val="0"/>' +
        `${series}<c:gapWidth val="70"/>${axes}</c:barChart>`;
  const legend =
    plan.series.length > 1 ? `<c:legend><c:legendPos val="b"/><c:overlay val="0"/>${letters(9)}</c:legend>` : '';
  return (
    `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<c:chartSpace ${namespaces}><c:date1904 val="0"/>` +
    `<c:roundedCorners val="0"/><c:chart>${titleXml(plan.title, { size: 12, bold: true })}` +
    `<c:autoTitleDeleted val="0"/><c:plotArea><c:layout/>${drawn}${axesXml(plan)}</c:plotArea>${legend}` +
    '<c:plotVisOnly val="0"/><c:dispBlanksAs val="gap"/></c:chart>' +
    `<c:spPr>${paint(palette.paper)}${stroke(palette.line)}</c:spPr>${letters(9)}</c:chartSpace>`
  );
}

function letters(size: number): string {
  return (
    `<c:txPr><a:bodyPr/><a:p><a:pPr><a:defRPr sz="${size * 100}">${paint(palette.ink)}` +
    `<a:latin typeface="${fontFamily}"/></a:defRPr></a:pPr><a:endParaRPr lang="en-US"/></a:p></c:txPr>`
  );
}

/** The title of a chart or of one of its axes. */
function titleXml(
  words: string,
  { size, bold = false, upward = false }: { readonly size: number; readonly bold?: boolean; readonly upward?: boolean },
): string {
  const turned = upward ? '<a:bodyPr rot="-5400000" vert="horz"/>' : '<a:bodyPr/>';
  const look =
    `sz="${size * 100}" b="${bold ? 1 : 0}">${paint(bold ? palette.deep : palette.ink)}` +
    `<a:latin typeface="${fontFamily}"/>`;
  return (
    `<c:title><c:tx><c:rich>${turned}<a:p><a:pPr><a:defRPr ${look}</a:defRPr></a:pPr><a:r><a:rPr lang="en-US" ${look}` +
    `</a:rPr><a:t>${xmlText(words)}</a:t></a:r></a:p></c:rich></c:tx><c:overlay val="0"/></c:title>`
  );
}

/** The axis across, of numbers or of names, and the axis up. */
function axesXml({ kind, across, up }: ChartPlan): string {
  const upward =
    `<c:valAx><c:axId val="2"/>${scale(up)}<c:delete val="0"/><c:axPos val="l"/>` +
    `<c:majorGridlines><c:spPr>${stroke(palette.line)}</c:spPr></c:majorGridlines>` +
    `${titleXml(up.title, { size: 9, upward: true })}${labels(up)}<c:crossAx val="1"/><c:crosses val="min"/>` +
    `<c:crossBetween val="${kind === 'scatter' ? 'midCat' : 'between'}"/></c:valAx>`;
  const tag = kind === 'scatter' ? 'valAx' : 'catAx';
  const rest =
    kind === 'scatter'
      ? '<c:crossBetween val="midCat"/>'
      : '<c:auto val="0"/><c:lblAlgn val="ctr"/><c:lblOffset val="100"/><c:noMultiLvlLbl val="1"/>';
  return (
    `<c:${tag}><c:axId val="1"/>${scale(across)}<c:delete val="0"/><c:axPos val="b"/>` +
    `${titleXml(across.title, { size: 9 })}${labels(across)}<c:crossAx val="2"/><c:crosses val="min"/>${rest}</c:${tag}>` +
    upward
  );
}

function scale({ from }: ChartAxis): string {
  const least = from === undefined ? '' : `<c:min val="${from}"/>`;
  return `<c:scaling><c:orientation val="minMax"/>${least}</c:scaling>`;
}

function labels({ format }: ChartAxis): string {
  return (
    `<c:numFmt formatCode="${xmlText(format)}" sourceLinked="0"/><c:majorTickMark val="out"/>` +
    `<c:minorTickMark val="none"/><c:tickLblPos val="low"/><c:spPr>${stroke(palette.quiet)}</c:spPr>`
  );
}
