import { numberText, type NumberText } from './numberText.js';

/** A number with its unit or a mark in front, such as "1.234 L", ">2,5" or "void 1,62 ppm". */
interface MeasureText {
  readonly before: string;
  readonly number: string;
  readonly after: string;
  readonly read: NumberText;
}

const measure =
  /^(\s*(?:void\s+)?[<>~\u2264\u2265]?\s*)([+-]?\d[\d.,'\u2019\u00a0\u202f]*)(\s*(?:(?:us|imp)\s+)?(?:fl\s+oz|[a-z\u00b5\u03bc\u00b0%]{0,7}(?:\s?\/\s?[a-z]{1,3})?)[.?]?\s*)$/i;

/** 8.30 h is half past eight, and tells nothing of decimals. */
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
