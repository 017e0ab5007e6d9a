import type { Alignment, Border, Fill, Style } from 'excelize-wasm';

/** The colours of the templates, few and calm; text on each is readable, also where a printer knows no colours. */
export const palette = {
  ink: '1C2B33',
  quiet: '4A5B64',
  line: 'CFD8DC',
  deep: '1F4E5F',
  heading: '37677A',
  paper: 'FFFFFF',
  inputPaper: 'E6F0FA',
  bandPaper: 'EEF4F6',
  insidePaper: 'D7E9EE',
  lowPaper: 'F2C9A6',
  warnInk: '7A2E0E',
  warnPaper: 'FDF3EC',
  mark: 'B4521E',
} as const;

type Colour = (typeof palette)[keyof typeof palette];

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

/** How cells of each look are drawn. */
export const looks = {
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
  cell: { Font: font(), Alignment: left },
  cellNumber: { Font: font(), Alignment: right },
  name: { Font: { ...font(), ...bold }, Alignment: left },
  smallText: { Font: font(9), Alignment: wrapped },
  wrapped: { Font: font(), Alignment: wrapped },
  wrappedName: { Font: { ...font(), ...bold }, Alignment: wrapped },
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
  lineTitle: { Font: { ...font(12, palette.deep), ...bold }, Alignment: left },
  aside: { Font: { ...font(9, palette.quiet), Italic: true }, Alignment: left },
  unit: { Font: font(9, palette.quiet), Alignment: left },
  answerNumber: { Font: { ...font(), ...bold }, Alignment: right, Border: below },
  inputText: { Font: font(), Fill: fill(palette.inputPaper), Alignment: wrapped, Border: around },
  smallNumber: { Font: font(9), Alignment: { ...right, WrapText: true } },
  small: { Font: font(9), Alignment: left },
  caption: { Font: { ...font(9, palette.quiet), Italic: true }, Alignment: wrapped },
  warning: { Font: { ...font(10, palette.warnInk), ...bold }, Alignment: wrapped },
  refusal: { Font: { ...font(10, palette.warnInk), ...bold }, Fill: fill(palette.warnPaper), Alignment: right },
} satisfies Readonly<Record<string, Style>>;

export type Look = keyof typeof looks;

/** How a condition changes a cell: in lightness and weight, not in colour alone. */
export const tones = {
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
} satisfies Readonly<Record<string, Style>>;

export type Tone = keyof typeof tones;

/** Colours of the sheet tabs by what a sheet is for. */
export const tabs = { read: palette.quiet, write: '5B8DB8', answer: palette.deep } as const;
