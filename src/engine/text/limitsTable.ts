import { limitStatus, type Limit } from '../limits/limit.js';
import * as limits from '../limits/limits.js';
import { columnsOf, type Table } from '../result/table.js';
import { sourceText } from './sourceText.js';

const limitsColumns = columnsOf({
  Limit: 'text',
  Value: 'number',
  Unit: 'text',
  Decides: 'text',
  Status: 'text',
  Source: 'text',
});

/** Every limit that a rule, a plan, a gate or a task reads, by name: bundlers and test runners list a module differently. */
export function limitsTable(): Table {
  const listed = Object.entries<Limit>(limits).sort(([one], [other]) => (one < other ? -1 : 1));
  return { columns: limitsColumns, rows: listed.map(([name, limit]) => limitRow(name, limit)) };
}

function limitRow(name: string, limit: Limit): Table['rows'][number] {
  const { value, unit, decides, source = 'Practice' } = limit;
  const words = name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return [words, Number(value.toPrecision(4)), unit, decides, limitStatus(limit), sourceText(source)];
}
