import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import { shown } from '../units/shown.js';
import { copperForms, formNames, type FormName } from './forms.js';
import { isBlank, type Cell } from '../units/cell.js';
import { misplaced } from '../units/parseQuantity.js';
import type { Reader } from '../units/readers/reader.js';

/** The trade calls both free and amine-complexed copper so; guessing would mean 2.5 times the dose. */
const unclear = ['ionic', 'copper'];

/**
 * The form of copper that a text names, case and spaces free.
 *
 * Definition: the words of copperForms, alone or beside the word copper; "ionic" and "copper" alone are unclear.
 *
 * @param text what was written
 * @param field the argument it was written in
 * @returns name of the form
 * @example formOf('Chelated copper', 'form').value // = 'chelated'
 */
export function formOf(text: string, field: string): Result<FormName, Problem> {
  const word = withoutCopper(text.trim().toLowerCase().split(/\s+/));
  if (unclear.includes(word)) return refuse({ code: 'form-unclear', field, given: shown(text) });
  const form = formNames.find((name) => copperForms[name].words.includes(word));
  return form === undefined ? refuse({ code: 'not-a-form', field, given: shown(text) }) : ok(form);
}

/** The word that is left when one "copper" before or after it is dropped; several words stay one unknown word. */
function withoutCopper(words: readonly string[]): string {
  const [first = '', second] = words;
  if (words.length !== 2 || first === second) return words.join(' ');
  if (second === 'copper') return first;
  return first === 'copper' && second !== undefined ? second : words.join(' ');
}

/** The form of copper a cell names. */
export function formIn(cell: Cell): Reader<FormName> {
  return (field) => {
    if (cell === null || isBlank(cell)) return refuse({ code: 'blank', at: { field }, kind: 'form' });
    if (typeof cell === 'object') return refuse(misplaced(cell, { field }));
    return typeof cell === 'string' ? formOf(cell, field) : refuse({ code: 'not-a-form', field, given: shown(cell) });
  };
}
