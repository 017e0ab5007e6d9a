/** The number at the start of a text, and what follows it. */
interface DecimalText {
  readonly value: number;
  readonly rest: string;
  /** "1,250" is ambiguous: 1.25 or 1250. "0,185" cannot be thousands. */
  readonly unclear: boolean;
}

const leadingNumber = /^([+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:e[+-]?\d+)?)\s*(.*)$/i;

/** Reads a number with a decimal point or a decimal comma; null where the text does not start with one. */
export function decimalText(text: string): DecimalText | null {
  const match = leadingNumber.exec(text.replace(/\u2212/g, '-').trim());
  if (match === null) return null;
  const [, digits = '', rest = ''] = match;
  const value = Number(digits.replace(',', '.'));
  if (!Number.isFinite(value)) return null;
  return { value, rest: rest.trim(), unclear: isUnclearComma(digits) };
}

/** Three digits after a comma, unless nothing but a 0 stands before it. */
export function isUnclearComma(digits: string): boolean {
  return /,\d{3}(?!\d)/.test(digits) && !/^[+-]?0?,/.test(digits);
}
