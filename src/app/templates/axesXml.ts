import type { ChartAxis, ChartPlan } from './chartPlan.js';
import { chartText } from './chartText.js';
import { palette } from './palette.js';
import { xmlText } from './xmlText.js';

const stroke = (colour: string): string =>
  `<c:spPr><a:ln w="9525"><a:solidFill><a:srgbClr val="${colour}"/></a:solidFill></a:ln></c:spPr>`;

/** The axis across, of numbers or of names, and the axis up. */
export function axesXml({ kind, across, up }: ChartPlan): string {
  const upward =
    `<c:valAx><c:axId val="2"/>${scale(up)}<c:delete val="0"/><c:axPos val="l"/>` +
    `<c:majorGridlines>${stroke(palette.line)}</c:majorGridlines>${chartText(up.title, { size: 9, upward: true })}` +
    `${labels(up)}<c:crossAx val="1"/><c:crosses val="min"/><c:crossBetween val="${kind === 'scatter' ? 'midCat' : 'between'}"/></c:valAx>`;
  const tag = kind === 'scatter' ? 'valAx' : 'catAx';
  const rest =
    kind === 'scatter'
      ? '<c:crossBetween val="midCat"/>'
      : '<c:auto val="0"/><c:lblAlgn val="ctr"/><c:lblOffset val="100"/><c:noMultiLvlLbl val="1"/>';
  return (
    `<c:${tag}><c:axId val="1"/>${scale(across)}<c:delete val="0"/><c:axPos val="b"/>` +
    `${chartText(across.title, { size: 9 })}${labels(across)}<c:crossAx val="2"/><c:crosses val="min"/>${rest}</c:${tag}>` +
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
    `<c:minorTickMark val="none"/><c:tickLblPos val="low"/>${stroke(palette.quiet)}`
  );
}
