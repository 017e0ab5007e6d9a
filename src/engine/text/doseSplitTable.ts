import type { DosePart } from '../dose/splitDose.js';
import { columnsOf, type Table } from '../result/table.js';
import { hoursPerDay, type SerialDay } from '../units/quantity.js';

export const doseSplitColumns = columnsOf({ When: 'time', 'Dose mL': 'number', 'Running mL': 'number' });
const columnsInHours = columnsOf({ Hours: 'number', 'Dose mL': 'number', 'Running mL': 'number' });

/** DOSESPLIT as a table: times where the first dose has one, else hours from the first dose. */
export function doseSplitTable(parts: readonly DosePart[], firstDose: SerialDay | undefined): Table {
  return {
    columns: firstDose === undefined ? columnsInHours : doseSplitColumns,
    rows: parts.map(({ offset, dose, running }) => [
      firstDose === undefined ? offset : firstDose + offset / hoursPerDay,
      dose,
      running,
    ]),
  };
}
