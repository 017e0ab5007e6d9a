import { type Content, table, type TableColumn } from '../../plan/index.js';
import { demoSheet } from '../demoSheet.js';
import { shopRows } from './shopRows.js';
import type { ShopRow } from './simulatedRows.js';

interface ShopColumn extends TableColumn {
  readonly cell: (row: ShopRow) => Content | undefined;
}

const amount = { kind: 'number', format: '0.0' } as const;
const columns: readonly ShopColumn[] = [
  { heading: 'System', width: 60, kind: 'text', cell: ({ system }) => system },
  { heading: 'Date and time', width: 126, kind: 'time', cell: ({ when }) => when },
  { heading: 'Cu ppm', width: 64, kind: 'number', format: '0.00', cell: ({ copper }) => copper },
  { heading: 'Dose mL', width: 72, ...amount, cell: ({ dose }) => dose },
  { heading: 'WC L', width: 54, ...amount, cell: ({ change }) => change },
  { heading: 'Top-off L', width: 68, ...amount, cell: ({ topOff }) => topOff },
  { heading: 'Salinity', width: 66, ...amount, cell: ({ salinity }) => salinity },
  { heading: 'Temp C', width: 62, ...amount, cell: ({ temperature }) => temperature },
  { heading: 'Fish in', width: 252, kind: 'text', cell: ({ fishIn }) => fishIn },
  { heading: 'Fish out', width: 136, kind: 'text', cell: ({ fishOut }) => fishOut },
  { heading: 'Dead', width: 48, kind: 'number', cell: ({ dead }) => dead },
  { heading: 'Eating?', width: 134, kind: 'text', cell: ({ eating }) => eating },
  { heading: 'Initials', width: 58, kind: 'text', cell: ({ by }) => by },
  { heading: 'Notes', width: 210, kind: 'text', cell: ({ note }) => note },
];

/** The shared sheet of all systems, as three people filled it. It begins in row 1, so a row named in a message is its row. */
export const shopLog = demoSheet({
  name: 'Shop log',
  isLog: true,
  parts: [
    table({
      at: 'A1',
      key: 'log',
      columns,
      rows: shopRows.map((row) => columns.map(({ cell }) => cell(row) ?? null)),
      // With room for the weeks to come.
      room: 1699,
      ruled: 'any',
    }),
  ],
});
