import type { SystemStanding } from '../audit/systemsNow.js';
import { columnsOf, type Table } from '../result/table.js';
import { secondDays } from '../units/quantity.js';
import { shownNumber } from '../units/shown.js';
import { doNowTable } from './doNowTable.js';

export const systemsColumns = columnsOf({
  System: 'text',
  'Last test': 'time',
  Copper: 'number',
  Status: 'text',
  'Hold day': 'number',
  'Days left': 'number',
  'Do now': 'text',
});

/** How each system stands, as SYSTEMS spills it. */
export function systemsTable(standings: readonly SystemStanding[], now: number): Table {
  return {
    columns: systemsColumns,
    rows: standings.map((system) => [
      system.name,
      system.lastTest ?? '',
      system.copper ?? '',
      system.status ?? '',
      system.held === null ? '' : Math.floor(system.held + secondDays) + 1,
      system.left ?? '',
      doText(system, now),
    ]),
  };
}

function doText({ tasks, lacks }: SystemStanding, now: number): string {
  if (lacks === 'card') return 'no card: add a row for this system';
  if (lacks === 'rows') return 'no rows in the log: test copper';
  const [first] = doNowTable(tasks, now).rows;
  if (first === undefined) return '';
  const [what, amount, unit] = first;
  const isDue = tasks[0]?.kind !== 'next test';
  if (!isDue) return 'nothing now: test daily';
  return typeof amount === 'number'
    ? `${String(what)} ${shownNumber(Number(amount.toPrecision(3)))} ${String(unit)}`
    : String(what);
}
