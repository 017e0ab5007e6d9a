import { dateText } from './dateText.js';
import { numberText } from './numberText.js';

/** Whether a field is plainly a number, a date or a time. */
export function isPlainField(field: string): boolean {
  return numberText(field) !== null || dateText(field) !== null;
}

/** Whether a record holds words only, two at least, as a heading row does. */
export function isWordsRecord(record: readonly string[]): boolean {
  const said = record.filter((field) => field.trim() !== '');
  return said.length > 1 && said.every((field) => /\p{L}/u.test(field) && !isPlainField(field));
}
