import type { LevelModel } from '../level/levelModel.js';
import { eventKinds, type WaterEvents } from '../log/waterEvents.js';
import { columnsOf, type Table, type TableCell } from '../result/table.js';

export const levelsColumns = columnsOf({
  When: 'time',
  Expected: 'number',
  Low: 'number',
  High: 'number',
  Reading: 'number',
  'Off by': 'number',
});

/** The level at every reading, dose, change and top-off; a corrected volume is no event of the tank. */
export function levelsTable(events: WaterEvents, { expected, low, high, residual }: LevelModel): Table {
  const rows: TableCell[][] = [];
  for (let index = 0; index < events.count; index++) {
    const kind = events.kind[index];
    if (kind === eventKinds.volume) continue;
    rows.push([
      events.when[index] ?? '',
      known(expected[index]),
      known(low[index]),
      known(high[index]),
      kind === eventKinds.reading ? known(events.amount[index]) : '',
      known(residual[index]),
    ]);
  }
  return { columns: levelsColumns, rows };
}

function known(level: number | undefined): TableCell {
  return level === undefined || Number.isNaN(level) ? '' : level;
}
