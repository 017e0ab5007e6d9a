/** What stands before the decimals. */
export type DecimalMark = '.' | ',';

/** A text that is plainly a number. */
interface NumberText {
  /** NaN where it depends on the mark. */
  readonly value: number;
  /** The mark before decimals that the text shows; null: it shows none. */
  readonly mark: DecimalMark | null;
  /** "1,234" and the like: its mark may be the decimal mark or may separate thousands. */
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

/** The number a text is, once the mark before its decimals is known. */
export function numberBy(text: string, mark: DecimalMark): number {
  const digits = text
    .trim()
    .replace('\u2212', '-')
    .replace(mark === ',' ? /[.'\u2019\u00a0\u202f]/g : /[,'\u2019\u00a0\u202f]/g, '');
  return Number(digits.replace(',', '.'));
}

/** A number with its unit or a mark in front, such as "1.234 L", ">2,5" or "void 1,62 ppm". */
interface MeasureText {
  readonly before: string;
  readonly number: string;
  readonly after: string;
  readonly read: NumberText;
}

const measure =
  /^(\s*(?:void\s+)?[<>~\u2264\u2265]?\s*)([+-]?\d[\d.,'\u2019\u00a0\u202f]*)(\s*(?:(?:us|imp)\s+)?(?:fl\s+oz|[a-z\u00b5\u03bc\u00b0%]{0,7}(?:\s?\/\s?[a-z]{1,3})?)[.?]?\s*)$/i;

/** 8.30 h is half past eight, and no evidence for a decimal mark. */
const clockUnit = /^\s*(?:[ap]\.?m\.?|h|hrs?|uhr)\s*$/i;

/** Reads a text as a number with something around it; null: it is none, or the number alone. */
export function measureText(text: string): MeasureText | null {
  const match = measure.exec(text);
  if (match === null) return null;
  const [, before = '', number = '', after = ''] = match;
  if (clockUnit.test(after)) return null;
  const read = before.trim() === '' && after.trim() === '' ? null : numberText(number);
  return read === null ? null : { before, number, after, read };
}
