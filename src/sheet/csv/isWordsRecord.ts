import { isPlainField } from './isPlainField.js';

/** Whether all that a record says are words, two at least: a heading row. */
export function isWordsRecord(record: readonly string[]): boolean {
  const said = record.filter((field) => field.trim() !== '');
  return said.length > 1 && said.every((field) => /\p{L}/u.test(field) && !isPlainField(field));
}
