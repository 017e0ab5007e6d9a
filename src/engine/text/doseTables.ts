import type { ThinnedStock } from '../chemistry/thinnedStock.js';
import { columnsOf, type Table } from '../result/table.js';
import type { DosePart } from '../dose/splitDose.js';
import { hoursPerDay, type SerialDay } from '../units/quantity.js';
import type { RampStep } from '../dose/ramp.js';
import * as limits from '../limits/limits.js';

export const thinColumns = columnsOf({ 'Stock mL': 'number', 'Water mL': 'number' });

/** THIN as a table. */
export function thinTable({ stock, water }: ThinnedStock): Table {
  return { columns: thinColumns, rows: [[stock, water]] };
}

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

export const rampColumns = columnsOf({ When: 'time', 'Dose mL': 'number', 'Level after': 'number', Do: 'text' });

/** RAMP as a table, with what to do at each dose. */
export function rampTable(steps: readonly RampStep[]): Table {
  return {
    columns: rampColumns,
    rows: steps.map((step) => [step.at, step.dose, step.levelAfter, instruction(step)]),
  };
}

function instruction({ testFirst, testDecides, large, mostPerDose }: RampStep): string {
  const share = mostPerDose === limits.urgentMostPerDose.value ? 'half' : 'a quarter';
  return [
    testFirst ? 'test first, then dose' : 'dose',
    large ? `raises by more than ${share} of wanted in one dose: spread it over more doses (common practice)` : '',
    testDecides
      ? `test ${limits.mixing.value} h after: if the reading differs from Level after by more than ` +
        `${Math.round(limits.planOff.value * 100)} %, stop: volume or strength is wrong`
      : '',
  ]
    .filter((words) => words !== '')
    .join('; ');
}
