import type { RampStep } from '../dose/ramp.js';
import { columnsOf, type Table } from '../result/table.js';

export const rampColumns = columnsOf({ When: 'time', 'Dose mL': 'number', 'Level after': 'number', Do: 'text' });
import { limits } from '../limits/limits.js';

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
