import { isoFromSerial } from '../../base/isoFromSerial.js';
import { longestWhy, type Task } from '../judgement/task.js';
import { columnsOf, type Table } from '../result/table.js';
import { cut } from '../rules/phrases.js';
import { findingText } from './findingText.js';

export const doNowColumns = columnsOf({ Do: 'text', Amount: 'number', Unit: 'text', By: 'time', Why: 'text' });

/** What to do now, as DONOW spills it. */
export function doNowTable(tasks: readonly Task[]): Table {
  return {
    columns: doNowColumns,
    rows: tasks.map(({ act, amount, unit, by, why }) => [
      act,
      amount ?? '',
      amount === null ? '' : unit,
      by,
      typeof why === 'string' ? why : asAudited(why),
    ]),
  };
}

/** In AUDIT's words, with the row first. */
function asAudited({ finding, overdue }: Exclude<Task['why'], string>): string {
  const late = overdue === null ? '' : `overdue since ${isoFromSerial(overdue).slice(0, 16)}: `;
  const where = finding.row === null ? 'card' : `row ${finding.row}`;
  // Some findings begin with their row themselves.
  const said = findingText(finding).finding.replace(/^Row \d+: /, '');
  return cut(`${late}${where}: ${said}`, longestWhy);
}
