import { axesXml } from './axesXml.js';
import type { ChartPlan } from './chartPlan.js';
import { chartText } from './chartText.js';
import { palette } from './palette.js';
import { seriesXml, type ChartCells } from './seriesXml.js';

const namespaces =
  'xmlns:c="http://schemas.openxmlformats.org/drawingml/2006/chart" ' +
  'xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main" ' +
  'xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"';

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
    plan.series.length > 1 ? `<c:legend><c:legendPos val="b"/><c:overlay val="0"/>${text(9)}</c:legend>` : '';
  return (
    `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<c:chartSpace ${namespaces}><c:date1904 val="0"/>` +
    `<c:roundedCorners val="0"/><c:chart>${chartText(plan.title, { size: 12, bold: true })}` +
    `<c:autoTitleDeleted val="0"/><c:plotArea><c:layout/>${drawn}${axesXml(plan)}</c:plotArea>${legend}` +
    '<c:plotVisOnly val="0"/><c:dispBlanksAs val="gap"/></c:chart>' +
    `<c:spPr><a:solidFill><a:srgbClr val="${palette.paper}"/></a:solidFill>` +
    `<a:ln w="9525"><a:solidFill><a:srgbClr val="${palette.line}"/></a:solidFill></a:ln></c:spPr>${text(9)}</c:chartSpace>`
  );
}

function text(size: number): string {
  return (
    `<c:txPr><a:bodyPr/><a:p><a:pPr><a:defRPr sz="${size * 100}"><a:solidFill><a:srgbClr val="${palette.ink}"/>` +
    '</a:solidFill><a:latin typeface="Arial"/></a:defRPr></a:pPr><a:endParaRPr lang="en-US"/></a:p></c:txPr>'
  );
}
