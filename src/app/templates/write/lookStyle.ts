import type { Alignment, Border, Fill, Style } from 'excelize-wasm';
import { palette, type Colour } from './palette.js';
import type { Look, Tone } from '../plan/look.js';

/** Metric twins of it are on every system, so that widths hold everywhere. */
export const fontFamily = 'Arial';

const fill = (colour: Colour): Fill => ({ Type: 'pattern', Pattern: 1, Color: [colour] });
const line = (Type: string, Color: Colour = palette.line, thickness = 1): Border => ({ Type, Color, Style: thickness });
const below = [line('bottom')];
const around = ['left', 'top', 'right', 'bottom'].map((side) => line(side));
const middle: Alignment = { Vertical: 'center' };
const left: Alignment = { ...middle, Horizontal: 'left', Indent: 1 };
const right: Alignment = { ...middle, Horizontal: 'right', Indent: 1 };
const wrapped: Alignment = { ...left, WrapText: true };
const top: Alignment = { ...wrapped, Vertical: 'top' };
const font = (Size = 10, Color: Colour = palette.ink): NonNullable<Style['Font']> => ({
  Family: fontFamily,
  Size,
  Color,
});
const bold = { Bold: true };
const heading: Style = {
  Font: { ...font(10, palette.paper), ...bold },
  Fill: fill(palette.heading),
  Alignment: wrapped,
};

/** How each look of the plans is drawn. */
export const lookStyle: Readonly<Record<Look, Style>> = {
  title: { Font: { ...font(16, palette.deep), ...bold }, Alignment: left },
  lead: { Font: font(11, palette.quiet), Alignment: wrapped },
  note: { Font: font(9, palette.quiet), Alignment: wrapped },
  remark: { Font: font(9, palette.quiet), Alignment: left, Border: below },
  explained: { Font: font(9, palette.quiet), Alignment: wrapped, Border: below },
  section: { Font: { ...font(11, palette.deep), ...bold }, Alignment: left, Border: [line('bottom', palette.deep, 2)] },
  heading,
  numberHeading: { ...heading, Alignment: { ...right, WrapText: true } },
  // Above the button that a named table has at the foot of each heading.
  tableHeading: { ...heading, Alignment: top },
  tableNumberHeading: { ...heading, Alignment: { ...top, Horizontal: 'right' } },
  label: { Font: font(), Alignment: left, Border: below },
  input: { Font: font(), Fill: fill(palette.inputPaper), Alignment: left, Border: around },
  inputNumber: { Font: font(), Fill: fill(palette.inputPaper), Alignment: right, Border: around },
  answer: { Font: { ...font(11), ...bold }, Alignment: left, Border: below },
  state: { Font: { ...font(14, palette.deep), ...bold }, Fill: fill(palette.bandPaper), Alignment: wrapped },
  log: { Font: font(), Alignment: left },
  logNumber: { Font: font(), Alignment: right },
  logText: { Font: font(), Alignment: wrapped },
  spill: { Font: font(), Alignment: left },
  spillNumber: { Font: font(), Alignment: right },
  spillName: { Font: { ...font(), ...bold }, Alignment: left },
  spillText: { Font: font(9), Alignment: wrapped },
  step: { Font: font(), Alignment: wrapped },
  stepName: { Font: { ...font(), ...bold }, Alignment: wrapped },
  stepNumber: { Font: { ...font(10, palette.deep), ...bold }, Alignment: { ...middle, Horizontal: 'center' } },
  caution: { Font: font(10, palette.warnInk), Fill: fill(palette.warnPaper), Alignment: wrapped },
  cautionNumber: {
    Font: { ...font(10, palette.warnInk), ...bold },
    Fill: fill(palette.warnPaper),
    Alignment: { ...middle, Horizontal: 'center' },
  },
  link: { Font: { ...font(10, palette.deep), Underline: 'single' }, Alignment: left },
  helperNote: { Font: font(8, palette.quiet), Alignment: left },
  helper: { Font: font(8, palette.quiet), Alignment: right },
  plain: { Font: font(), Alignment: middle },
  lineTitle: { Font: { ...font(12, palette.deep), ...bold }, Alignment: left },
  aside: { Font: { ...font(9, palette.quiet), Italic: true }, Alignment: left },
  unit: { Font: font(9, palette.quiet), Alignment: left },
  answerNumber: { Font: { ...font(), ...bold }, Alignment: right, Border: below },
  inputText: { Font: font(), Fill: fill(palette.inputPaper), Alignment: wrapped, Border: around },
  wrappedNumber: { Font: font(9), Alignment: { ...right, WrapText: true } },
  spillSmall: { Font: font(9), Alignment: left },
  caption: { Font: { ...font(9, palette.quiet), Italic: true }, Alignment: wrapped },
  warning: { Font: { ...font(10, palette.warnInk), ...bold }, Alignment: wrapped },
  refusal: { Font: { ...font(10, palette.warnInk), ...bold }, Fill: fill(palette.warnPaper), Alignment: right },
};

/** How each tone changes a cell. */
export const toneStyle: Readonly<Record<Tone, Style>> = {
  row: { Border: below },
  verdict: { Font: { ...bold, Color: palette.deep }, Fill: fill(palette.bandPaper), Border: below },
  low: { Font: { ...bold, Color: palette.warnInk }, Fill: fill(palette.lowPaper), Border: below },
  inside: { Font: { Color: palette.ink }, Fill: fill(palette.insidePaper), Border: below },
  high: { Font: { ...bold, Color: palette.paper }, Fill: fill(palette.warnInk), Border: below },
  due: { Font: { ...bold, Color: palette.warnInk }, Fill: fill(palette.lowPaper), Border: below },
  overdue: { Font: { ...bold, Color: palette.paper }, Fill: fill(palette.warnInk), Border: below },
  done: { Font: { ...bold, Color: palette.paper }, Fill: fill(palette.deep), Border: below },
  example: { Font: { Italic: true, Color: palette.quiet }, Border: below },
  unseen: { Font: { Color: palette.paper } },
  guard: { Font: { ...bold, Color: palette.warnInk }, Fill: fill(palette.warnPaper), Border: below },
};
