import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  VerticalAlign,
  WrapStrategy,
  type IStyleData,
} from '@univerjs/core';
import type { Look } from '../templates/demo/sheetPlan.js';

const ink = { rgb: '#1c2b33' };
const warn = { rgb: '#7a2e0e' };
const quiet = { rgb: '#5a6a72' };
const line = { s: BorderStyleTypes.THIN, cl: { rgb: '#d5dde0' } };
const middle = { vt: VerticalAlign.MIDDLE, fs: 10, cl: ink, pd: { l: 5, r: 5 } };
const right = { ht: HorizontalAlign.RIGHT };
const inputPaper = { rgb: '#e6f0fa' };
const bold = { bl: BooleanNumber.TRUE };
const heading = { ...middle, ...bold, cl: { rgb: '#ffffff' }, bg: { rgb: '#37677a' }, tb: WrapStrategy.CLIP };

const wrapped = { ...middle, fs: 9, vt: VerticalAlign.TOP, tb: WrapStrategy.WRAP, pd: { t: 4, b: 5, l: 5, r: 5 } };

/** The heading row of a log in an opened file, whose own colours are not read. */
export const headingStyle: IStyleData = { ...middle, ...bold, bg: { rgb: '#e3edf0' }, bd: { b: line } };

/** The same above numbers. */
export const numberHeadingStyle: IStyleData = { ...headingStyle, ...right };

/** A cell without a look. */
export const plainStyle: IStyleData = middle;

/** How each look of the plans is drawn. */
export const lookStyle: Record<Look, IStyleData> = {
  title: { ...middle, ...bold, fs: 11, cl: { rgb: '#1f4e5f' } },
  note: { ...middle, cl: quiet, it: BooleanNumber.TRUE },
  section: {
    ...middle,
    ...bold,
    cl: { rgb: '#1f4e5f' },
    bd: { b: { s: BorderStyleTypes.MEDIUM, cl: { rgb: '#1f4e5f' } } },
  },
  heading,
  numberHeading: { ...heading, ...right },
  label: { ...middle, bd: { b: line } },
  input: { ...middle, ...right, bg: inputPaper, bd: { b: line, t: line, l: line, r: line } },
  inputText: { ...wrapped, bg: inputPaper, bd: { b: line, t: line, l: line, r: line } },
  answer: { ...middle, ...bold, ...right, bd: { b: line } },
  unit: { ...middle, cl: quiet },
  spill: { ...middle },
  spillText: { ...middle, fs: 9 },
  log: { ...middle, bd: { b: line } },
  wrapped: { ...wrapped, bd: { b: line } },
  caption: { ...middle, cl: quiet, it: BooleanNumber.TRUE, tb: WrapStrategy.WRAP },
  warning: { ...middle, ...bold, cl: warn, tb: WrapStrategy.WRAP },
  refusal: { ...middle, ...bold, ...right, cl: { rgb: '#9c1c1c' }, bg: { rgb: '#fdeeee' } },
};
