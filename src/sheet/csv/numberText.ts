import { numberBy, type DecimalMark } from './numberBy.js';

/** A text that is plainly a number. */
export interface NumberText {
  /** NaN where it depends on the mark. */
  readonly value: number;
  /** The mark before decimals that the text shows; null: it shows none. */
  readonly mark: DecimalMark | null;
  /** "1,234" and the like: what stands in it is the decimal mark, or parts thousands. */
  readonly unclear: DecimalMark | null;
}

const single = /^[+-]?(\d*)(?:([.,])(\d+))?$/;
const grouped = /^[+-]?[1-9]\d{0,2}(?:([.,'\u2019\u00a0\u202f])\d{3})(?:\1\d{3})*(?:([.,])\d+)?$/;
const scientific = /^[+-]?\d(?:[.,]\d+)?e[+-]\d{1,3}$/i;
/** No double holds more digits before the point; such a text is a name. */
const mostDigits = 15;

/** Reads a text as a number; null: it is none. Digits with a zero in front, such as 0900, are a name or a time. */
export function numberText(written: string): NumberText | null {
  const text = written.trim().replace('\u2212', '-');
  const match = single.exec(text);
  if (match !== null) {
    const [, whole = '', mark, part = ''] = match;
    if (whole.length > mostDigits || (whole.length > 1 && whole.startsWith('0'))) return null;
    if (mark === undefined) return whole === '' ? null : { value: Number(text), mark: null, unclear: null };
    const isUnclear = part.length === 3 && whole !== '' && whole !== '0' && whole.length <= 3;
    if (isUnclear) return { value: NaN, mark: null, unclear: mark as DecimalMark };
    return { value: numberBy(text, mark as DecimalMark), mark: mark as DecimalMark, unclear: null };
  }
  const groups = grouped.exec(text);
  if (groups !== null) return groupedNumber(text, groups[1] ?? '', groups[2] as DecimalMark | undefined);
  if (!scientific.test(text)) return null;
  const mark = text.includes(',') ? ',' : text.includes('.') ? '.' : null;
  const value = Number(text.replace(',', '.'));
  return Number.isFinite(value) ? { value, mark, unclear: null } : null;
}

function groupedNumber(text: string, group: string, decimal: DecimalMark | undefined): NumberText | null {
  if (decimal === group) return null;
  const mark = decimal ?? (group === '.' ? ',' : group === ',' ? '.' : null);
  return { value: numberBy(text, mark ?? '.'), mark, unclear: null };
}
