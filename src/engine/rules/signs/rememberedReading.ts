import { signReading, type SignReading } from './signReading.js';

/** As many texts as a long log has rows; texts longer than this do not come again. */
const most = 10_000;
const longest = 200;

const known = new Map<string, SignReading>();

/**
 * `signReading`, worked out once for a text: the same words come again and again in a log, and the same log with each
 * function that reads it and each time the sheet is calculated.
 */
export function rememberedReading(text: string): SignReading {
  const before = known.get(text);
  if (before !== undefined) return before;
  const reading = signReading(text);
  if (known.size >= most) known.clear();
  if (text.length <= longest) known.set(text, reading);
  return reading;
}
