import {
  callWith,
  type Condition,
  conditionIn,
  ok,
  readFish,
  surely,
  tolerancesOf,
  toleranceTable,
  treatmentsFor,
  treatmentTable,
} from '../src/engine/index.js';
import { tableAnswer } from './answer.js';
import { cellOf } from './cellOf.js';
import { rangeOf } from './rangeOf.js';

/**
 * What is known of each fish and copper: never, avoid, caution, usual care or not listed. Not listed does not mean tolerant; a veterinarian decides.
 * @customfunction TOLERANCE
 * @param fish Names of fish or groups: a cell, commas between them, or a column. Trade or scientific names.
 * @returns Table with headings: Fish, Advice, Why, Source.
 */
export function toleranceCell(fish: any[][]): any[][] {
  const names = readFish({ fish: rangeOf(fish), cellOf });
  return tableAnswer(names.ok ? ok(toleranceTable(tolerancesOf(names.value))) : names);
}

/**
 * What copper does to a disease, what else is given, in what order, and from where that is known. An aquatic veterinarian decides.
 * @customfunction TREATMENTFOR
 * @param condition The disease, such as "white spot", "velvet", "flukes" or "unknown".
 * @returns Table with headings: Condition, Copper, Give, When, Source.
 */
export function treatmentForCell(condition: any): any[][] {
  return tableAnswer(
    callWith(
      surely((read: { readonly condition: Condition }) => treatmentTable(treatmentsFor(read.condition))),
      { condition: conditionIn(cellOf(condition)) },
    ),
  );
}
