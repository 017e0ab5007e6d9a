import type { DosePart } from '../dose/splitDose.js';
import type { Table } from '../result/table.js';
import { hoursPerDay, type SerialDay } from '../units/quantity.js';

/** DOSESPLIT as a table: times where the first dose has one, else hours from the first dose. */
export function doseSplitTable(parts: readonly DosePart[], firstDose: SerialDay | undefined): Table {
  return {
    heading: [firstDose === undefined ? 'Hours' : 'When', 'Dose mL', 'Running mL'],
    rows: parts.map(({ offset, dose, running }) => [
      firstDose === undefined ? offset : firstDose + offset / hoursPerDay,
      dose,
      running,
    ]),
  };
}
