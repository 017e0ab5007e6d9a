import { refuse } from '../result/result.js';
import { isBlank, type Cell } from '../units/cell.js';
import { misplaced } from '../units/parseQuantity.js';
import type { Reader } from '../units/readers/reader.js';
import { shown } from '../units/shown.js';
import { formOf } from './formOf.js';
import type { FormName } from './forms.js';

/** The form of copper a cell names. */
export function formIn(cell: Cell): Reader<FormName> {
  return (field) => {
    if (cell === null || isBlank(cell)) return refuse({ code: 'blank', at: { field }, kind: 'form' });
    if (typeof cell === 'object') return refuse(misplaced(cell, { field }));
    return typeof cell === 'string' ? formOf(cell, field) : refuse({ code: 'not-a-form', field, given: shown(cell) });
  };
}
