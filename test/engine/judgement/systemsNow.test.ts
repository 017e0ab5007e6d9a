import { systemCards } from '../../../src/engine/audit/logOf.js';
import { systemsNow } from '../../../src/engine/judgement/systemsNow.js';
import { readLog } from '../../../src/engine/log/table/readLog.js';
import { systemsTable } from '../../../src/engine/text/systemsTable.js';
import type { Cell } from '../../../src/engine/units/cell.js';
import { rowsOf } from '../rules/treatmentFrom.js';

const cellOf = (raw: unknown): Cell => (raw === undefined ? null : (raw as Cell));
const asOf = 46084.5;

function standings(log: string, cards: string) {
  const read = systemCards({ range: rowsOf(cards), cellOf });
  if (!read.ok) throw new Error(JSON.stringify(read.problem));
  const rows = readLog({
    log: { range: rowsOf(log), firstRow: 1, cellOf },
    gallon: 'US',
    needs: ['time', 'copper', 'system'],
  });
  if (!rows.ok) throw new Error(JSON.stringify(rows.problem));
  return systemsTable(systemsNow(rows.value, read.value, asOf), asOf).rows;
}

describe('systemsNow', () => {
  it('shows each system of a shared log, names matched without case, in the order of the cards', () => {
    const rows = standings(
      `Tank | When | Cu ppm
       rack a | 46082.5 | 2.2
       RACK B | 46082.5 | 0.4
       Rack A | 46083.5 | 2.2
       Rack A | 46084.25 | 2.3
       rack b | 46084.25 | 0.5
       Rack D | 46084 | 2.2`,
      `System | Volume | Form | Strength | Days
       Rack B | 400 L | amine | 10 | 14
       Rack A | 100 gal | chelated | 10 | 30
       Rack C | 50 | chelated | 10 | 30`,
    );
    expect(rows).toEqual([
      ['Rack B', 46084.25, 0.5, 'in band', 1, 13.75, 'nothing now', 'holding', 6],
      ['Rack A', 46084.25, 2.3, 'in band', 3, 28, 'nothing now', 'holding', 6],
      ['Rack C', '', '', '', '', '', 'no rows in the log: test copper', '', ''],
      ['Rack D', '', '', '', '', '', 'no card: add a row for this system', '', ''],
    ]);
  });

  it('refuses a card that lacks what cannot be done without, by its system', () => {
    const read = systemCards({ range: rowsOf('System | Volume | Form\nRack B | | amine'), cellOf });
    expect(read).toMatchObject({ problem: { code: 'card-without', card: 'card of "Rack B"', name: 'volume' } });
    expect(
      systemCards({ range: rowsOf('System | Volume | Form\na | 1 | amine\nA | 1 | amine'), cellOf }),
    ).toMatchObject({
      problem: { code: 'card-twice', name: 'system', first: 'a', second: 'A' },
    });
    expect(systemCards({ range: rowsOf('Volume | Form\n100 | amine'), cellOf })).toMatchObject({
      problem: { code: 'card-without', card: 'cards', name: 'system' },
    });
  });
});
