import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  VerticalAlign,
  WrapStrategy,
  type IBorderData,
  type IStyleData,
} from '@univerjs/core';
import type { BorderLine, CellLook, LineKind } from '../../sheet/index.js';
import { fontOnMachine } from './fontOnMachine.js';

const lines: Readonly<Record<LineKind, BorderStyleTypes>> = {
  hair: BorderStyleTypes.HAIR,
  thin: BorderStyleTypes.THIN,
  medium: BorderStyleTypes.MEDIUM,
  thick: BorderStyleTypes.THICK,
  dotted: BorderStyleTypes.DOTTED,
  dashed: BorderStyleTypes.DASHED,
  'dash-dot': BorderStyleTypes.DASH_DOT,
  double: BorderStyleTypes.DOUBLE,
};
const across = {
  left: HorizontalAlign.LEFT,
  center: HorizontalAlign.CENTER,
  right: HorizontalAlign.RIGHT,
  justify: HorizontalAlign.JUSTIFIED,
} as const;
const upright = { top: VerticalAlign.TOP, center: VerticalAlign.MIDDLE } as const;

const usualSize = 11;
const black = '#000000';
const padding = 2;
const pixelsOfAnIndent = 9;

/**
 * A look of an opened file as the sheet component draws it. Every key is there, so that nothing shines through from the
 * row, the column or the sheet that a cell stands in.
 */
export function fileStyle(look: CellLook, format?: string): IStyleData {
  const indent = padding + (look.indent ?? 0) * pixelsOfAnIndent;
  const colour = look.colour ?? black;
  return {
    ff: look.font !== undefined && fontOnMachine(look.font) ? look.font : null,
    fs: look.size ?? usualSize,
    bl: switchOf(look.bold),
    it: switchOf(look.italic),
    ul: { s: switchOf(look.underline) },
    st: { s: switchOf(look.struck) },
    cl: { rgb: colour },
    bg: look.fill === undefined ? null : { rgb: look.fill },
    bd: bordersOf(look, colour),
    ht: look.across === undefined ? HorizontalAlign.UNSPECIFIED : across[look.across],
    vt: look.upright === undefined ? VerticalAlign.BOTTOM : upright[look.upright],
    tb: look.wrap === true ? WrapStrategy.WRAP : WrapStrategy.OVERFLOW,
    pd: { t: 1, b: 1, l: look.across === 'right' ? padding : indent, r: look.across === 'right' ? indent : padding },
    n: format === undefined ? null : { pattern: format },
  };
}

function switchOf(isOn: true | undefined): BooleanNumber {
  return isOn === true ? BooleanNumber.TRUE : BooleanNumber.FALSE;
}

function bordersOf({ borders }: CellLook, letters: string): IBorderData | null {
  if (borders === undefined) return null;
  const drawn = (border: BorderLine | undefined): IBorderData['t'] =>
    border === undefined ? null : { s: lines[border.line], cl: { rgb: border.colour ?? letters } };
  return { t: drawn(borders.top), r: drawn(borders.right), b: drawn(borders.bottom), l: drawn(borders.left) };
}
