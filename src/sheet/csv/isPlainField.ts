import { dateText } from './dateText.js';
import { numberText } from './numberText.js';

/** Whether a field is plainly a number, a date or a time. */
export function isPlainField(field: string): boolean {
  return numberText(field) !== null || dateText(field) !== null;
}
