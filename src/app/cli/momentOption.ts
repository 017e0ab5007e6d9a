import { timeIn } from '../../engine/index.js';
import { FileProblem } from '../../sheet/index.js';

/** A time given as an option, such as `--as-of "2026-03-01 08:00"`, as a serial day. */
export function momentOption(text: string, option: string): number {
  const serial = /^\d+(?:\.\d+)?$/.test(text.trim()) ? Number(text) : text;
  const read = timeIn(serial)(option);
  if (read.ok) return read.value;
  throw new FileProblem(`${option} is "${text}"; write a date or a date and time, such as "2026-03-01 08:00"`);
}
