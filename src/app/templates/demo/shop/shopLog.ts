import type { PlanCell, SheetPlan } from '../sheetPlan.js';
import type { ShopRow } from './shopRow.js';
import { shopRows } from './shopRows.js';

const columns: readonly (readonly [heading: string, width: number, cell: (row: ShopRow) => PlanCell | undefined])[] = [
  ['System', 60, ({ system }) => system],
  ['Date and time', 126, ({ when }) => when],
  ['Cu ppm', 64, ({ copper }) => copper],
  ['Dose mL', 72, ({ dose }) => dose],
  ['WC L', 54, ({ change }) => change],
  ['Top-off L', 68, ({ topOff }) => topOff],
  ['Salinity', 66, ({ salinity }) => salinity],
  ['Temp C', 62, ({ temperature }) => temperature],
  ['Fish in', 252, ({ fishIn }) => fishIn],
  ['Fish out', 136, ({ fishOut }) => fishOut],
  ['Dead', 48, ({ dead }) => dead],
  ['Eating?', 134, ({ eating }) => eating],
  ['Initials', 58, ({ by }) => by],
  ['Notes', 210, ({ note }) => note],
];

/** The last row the answers look at: room for the weeks to come. */
const lastRow = 1700;

/** The whole log with its headings, as another sheet refers to it. */
export const shopLogRange = `'Shop log'!A1:N${lastRow}`;
/** Its column of system names. */
export const shopLogSystems = `'Shop log'!A1:A${lastRow}`;

/** The shared sheet of all systems, as three people filled it. It begins in row 1, so a row named in a message is its row. */
export const shopLog: SheetPlan = {
  name: 'Shop log',
  widths: columns.map(([, width]) => width),
  rows: lastRow + 20,
  frozenRows: 1,
  blocks: [
    { at: 'A1', cells: [columns.map(([heading]) => heading)] },
    { at: 'A2', cells: shopRows.map((row) => columns.map(([, , cell]) => cell(row) ?? null)) },
  ],
  looks: [
    { range: 'A1:B1', look: 'heading' },
    { range: 'C1:H1', look: 'numberHeading' },
    { range: 'I1:J1', look: 'heading' },
    { range: 'K1', look: 'numberHeading' },
    { range: 'L1:N1', look: 'heading' },
    { range: `A2:N${lastRow}`, look: 'log' },
  ],
  formats: [
    { range: `B2:B${lastRow}`, format: 'yyyy-mm-dd hh:mm' },
    { range: `C2:C${lastRow}`, format: '0.00' },
    { range: `D2:H${lastRow}`, format: '0.0' },
  ],
  merged: [],
};
