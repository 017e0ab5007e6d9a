import type { SystemStanding } from '../judgement/systemsNow.js';
import { columnsOf, type Table } from '../result/table.js';
import { secondDays } from '../units/quantity.js';
import { shownNumber } from '../units/shown.js';

export const systemsColumns = columnsOf({
  System: 'text',
  'Last test': 'time',
  Copper: 'number',
  Status: 'text',
  'Hold day': 'number',
  'Days left': 'number',
  'Do now': 'text',
  Stage: 'text',
  'Hours since test': 'number',
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
      system.stage ?? '',
      system.hours === null ? '' : Number(system.hours.toFixed(1)),
    ]),
  };
}

function doText({ tasks, lacks }: SystemStanding, now: number): string {
  if (lacks === 'card') return 'no card: add a row for this system';
  if (lacks === 'rows') return 'no rows in the log: test copper';
  const due = tasks.find(({ by }) => by <= now + secondDays);
  if (due === undefined) return 'nothing now';
  return due.amount === null ? due.act : `${due.act} ${shownNumber(due.amount)} ${due.unit}`;
}
