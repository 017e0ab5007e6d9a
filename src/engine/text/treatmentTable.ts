import type { Treatment } from '../fish/treatment.js';
import { columnsOf, type Table } from '../result/table.js';
import { sourceText } from './sourceText.js';
import { conditionWords, copperWords, remedyWords, timingWords } from './treatmentWords.js';

export const treatmentColumns = columnsOf({
  Condition: 'text',
  Copper: 'text',
  Give: 'text',
  When: 'text',
  Source: 'text',
});

/** What helps with a condition, as TREATMENTFOR spills it. */
export function treatmentTable(treatments: readonly Treatment[]): Table {
  return {
    columns: treatmentColumns,
    rows: treatments.map((treatment) => [
      conditionWords[treatment.condition],
      copperWords[treatment.copper],
      remedyWords[treatment.give],
      timingWords[treatment.when],
      sources(treatment),
    ]),
  };
}

function sources({ sources, derived }: Treatment): string {
  return `${derived ? 'derived from ' : ''}${sources.map(sourceText).join('; ')}`;
}
