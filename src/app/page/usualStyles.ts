import { BooleanNumber, BorderStyleTypes, HorizontalAlign, VerticalAlign, type IStyleData } from '@univerjs/core';

/** A cell of a file that says nothing of looks, such as a table of plain text. */
export const plainStyle: IStyleData = { vt: VerticalAlign.MIDDLE, fs: 10, cl: { rgb: '#1c2b33' }, pd: { l: 5, r: 5 } };

/** The heading row of a log in such a file. */
export const headingStyle: IStyleData = {
  ...plainStyle,
  bl: BooleanNumber.TRUE,
  bg: { rgb: '#e3edf0' },
  bd: { b: { s: BorderStyleTypes.THIN, cl: { rgb: '#d5dde0' } } },
};

/** The same above numbers. */
export const numberHeadingStyle: IStyleData = { ...headingStyle, ht: HorizontalAlign.RIGHT };
