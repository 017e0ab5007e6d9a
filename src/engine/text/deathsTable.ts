import type { LotDeaths } from '../audit/lotDeaths.js';
import { columnsOf, type Table } from '../result/table.js';

export const deathsColumns = columnsOf({
  Lot: 'text',
  'Came in': 'number',
  'Dead on arrival': 'number',
  Raising: 'number',
  Hold: 'number',
  Observation: 'number',
  Left: 'number',
  '% after arrival': 'number',
});

/** Zec, Hadfield, Hungerford (2021), abstract [seen]: of all fish treated, in percent. */
const publishedPercent = 4.1;
const yardstick =
  'published yardstick: 199 of 4,835 fish died, 24.1 % of these while raising; 7.7 % where copper began in week one, ' +
  '3.3 % later (Zec, Hadfield, Hungerford 2021)';

/** The deaths of each lot beside the published yardstick, as DEATHS spills them. */
export function deathsTable(lots: readonly LotDeaths[]): Table {
  const rows = lots.map((each) => [
    each.lot === '' ? 'no lot given' : each.lot,
    each.cameIn ?? '',
    each.deadOnArrival,
    each.raising,
    each.hold,
    each.observation,
    each.left ?? '',
    each.percentAfterArrival ?? '',
  ]);
  const none = ['none', '', '', '', '', '', '', ''];
  return {
    columns: deathsColumns,
    // The counts of the source stand in words: in their columns they would join the sums of the keeper's own fish.
    rows: [...(rows.length === 0 ? [none] : rows), [yardstick, '', '', '', '', '', '', publishedPercent]],
  };
}
