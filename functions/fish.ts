import {
  argumentsIn,
  conditionIn,
  ok,
  readFish,
  tolerancesOf,
  toleranceTable,
  treatmentsFor,
  treatmentTable,
} from '../src/engine/index.js';
import { refusal, tableAnswer } from './answer.js';
import { cellOf } from './cellOf.js';
import { rangeOf } from './rangeOf.js';

/**
 * What is known about each fish and copper: never, avoid, caution, usual care or not listed. Not listed does not mean tolerant; a veterinarian decides.
 * @customfunction TOLERANCE
 * @param fish Names of fish or groups: a cell, commas between them, or a column. Trade or scientific names.
 * @returns Table with headings: Fish, Advice, Why, Source.
 */
export function toleranceCell(fish: any[][]): any[][] {
  const names = readFish({ fish: rangeOf(fish), cellOf });
  if (!names.ok) return refusal(names);
  return tableAnswer(ok(toleranceTable(tolerancesOf(names.value))));
}

/**
 * What copper does to a disease, what else is given, in what order, and from where that is known. An aquatic veterinarian decides.
 * @customfunction TREATMENTFOR
 * @param condition The disease, such as "white spot", "velvet", "flukes" or "unknown".
 * @returns Table with headings: Condition, Copper, Give, When, Source.
 */
export function treatmentForCell(condition: any): any[][] {
  const asked = argumentsIn({ condition: conditionIn(cellOf(condition)) });
  if (!asked.ok) return refusal(asked);
  return tableAnswer(ok(treatmentTable(treatmentsFor(asked.value.condition))));
}
