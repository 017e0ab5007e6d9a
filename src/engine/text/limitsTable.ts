import { limitStatus, limitTopics, type Limit } from '../limits/limit.js';
import * as limits from '../limits/limits.js';
import { columnsOf, type Table } from '../result/table.js';
import { sourceText } from './sourceText.js';

const limitsColumns = columnsOf({
  Of: 'text',
  Limit: 'text',
  Value: 'number',
  Unit: 'text',
  Decides: 'text',
  Status: 'text',
  Source: 'text',
});

/** Every limit that a rule, a plan, a gate or a task reads, by what it is about and by name. */
export function limitsTable(): Table {
  // Bundlers and test runners list a module's constants each in an order of their own.
  const named = Object.entries<Limit>(limits).sort(([a], [b]) => (a < b ? -1 : 1));
  const rows = limitTopics.flatMap((topic) => named.filter(([, { of }]) => of === topic));
  return { columns: limitsColumns, rows: rows.map(([name, limit]) => limitRow(name, limit)) };
}

function limitRow(name: string, limit: Limit): Table['rows'][number] {
  const { of, value, unit, decides, source = 'Practice' } = limit;
  const words = name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return [of, words, Number(value.toPrecision(4)), unit, decides, limitStatus(limit), sourceText(source)];
}
