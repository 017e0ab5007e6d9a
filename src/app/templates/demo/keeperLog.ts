import { answerTable, form, line, table } from '../plan/index.js';
import { demoSheet } from './demoSheet.js';
import { keeperLogRows } from './keeperLogRows.js';
import { serialOf } from '../sheets/rowsOf.js';

const columns = 6;
const moment = 'yyyy-mm-dd hh:mm';

/** Times and readings of the log with their headings, as the first two arguments of a formula of another sheet. */
export const keeperReadings = '{Log!log.when+},{Log!log.copper+}';
const readings = '{log.when+},{log.copper+}';

const log = table({
  at: 'A1',
  key: 'log',
  columns: [
    { key: 'when', heading: 'Date and time', kind: 'time', width: 128 },
    { key: 'copper', heading: 'Copper mg/L', kind: 'number', width: 94, format: '0.00' },
    { key: 'change', heading: 'Water change L', kind: 'number', width: 112, format: '0.0' },
    { key: 'dose', heading: 'Dose mL', kind: 'number', width: 68, format: '0.0' },
    { key: 'notes', heading: 'Notes', kind: 'text', width: 266 },
  ],
  rows: keeperLogRows.map(([when, copper, change, dose, note]) => [
    serialOf(when),
    copper,
    change,
    dose,
    note === '' ? null : note,
  ]),
  // With room for the days to come.
  room: 89,
  ruled: 'any',
});

const holdToDate = form({
  at: 'G2',
  looks: { beside: 'aside' },
  lines: {
    copper: ['Copper in this tank', 'chelated', 'write here "sulfate", "amine" or "chelated"'],
    its: ['Its band', '=QT.BAND({copper})', 'low and high limit, mg/L', { format: '0.00', fills: 2 }],
    hold: ['Hold to date', `=QT.HOLDDAYS(${readings},{copper})`, 'days without a break, to the last test', '0.00'],
    began: ['Began', `=QT.HOLDSTART(${readings},{copper})`, 'the first reading in the band after the dip', moment],
    are: ['30 days complete on', `=QT.HOLDENDS(${readings},{copper},30)`, 'if it holds until then', moment],
  },
});

const refusal = form({
  at: 'G8',
  title: 'What a refusal looks like',
  columns,
  looks: { answer: 'refusal', beside: 'aside' },
  lines: {
    error: [
      'An error on purpose',
      `=QT.HOLDDAYS(${readings},"ionic")`,
      'select H9 and read the line below the sheet',
      { isRefused: true },
    ],
  },
});

const card = form({
  at: 'G20',
  title: 'The card of this tank, for the plot and the audit',
  columns,
  looks: { given: 'inputText', beside: 'aside' },
  lines: {
    volume: ['Volume', '168 L', 'net, with sump and pipes'],
    form: ['Form', 'chelated', 'sulfate, amine or chelated'],
    strength: ['Strength', '4 mg/mL', 'of the solution, from its label: see QT.STRENGTH'],
    days: ['Days', 30, 'unbroken days wanted'],
  },
});

/** The log, and next to it the hold to date. The log begins in row 1, so a row named in a message is the row of the sheet. */
export const keeperLog = demoSheet({
  name: 'Log',
  isLog: true,
  gap: 10,
  parts: [
    log,
    line('G1', 'Tank Q2 at Lantern Quay Marine, kept by Orla Venn (both invented)', 'lineTitle', { columns }),
    holdToDate,
    refusal,
    line('G11', 'Every hold in this log', 'section', { columns }),
    answerTable({
      at: 'G12',
      id: 'HOLDS',
      given: `${readings},{copper}`,
      columns: { From: 152, To: 140, Days: 70, Enough: 84, 'Ended by': 132, Row: 56 },
      room: 6,
    }),
    card,
  ],
});
