import { answerTable } from '../plan/answerTable.js';
import { form } from '../plan/form.js';
import { line } from '../plan/line.js';
import { bodies } from '../plan/column.js';
import { table } from '../plan/table.js';
import { demoSheet } from './demoSheet.js';
import { keeperLogRows } from './keeperLogRows.js';
import { serialOf } from './serialOf.js';

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
  body: bodies.log,
  ruled: 'any',
});

const holdToDate = form({
  at: 'G2',
  looks: { beside: 'aside' },
  lines: [
    {
      key: 'copper',
      label: 'Copper in this tank',
      given: 'chelated',
      beside: 'write here "sulfate", "amine" or "chelated"',
    },
    {
      label: 'Its band',
      answer: '=QT.BAND({copper})',
      fills: 2,
      format: '0.00',
      beside: 'low and high limit, mg/L',
    },
    {
      label: 'Hold to date',
      answer: `=QT.HOLDDAYS(${readings},{copper})`,
      format: '0.00',
      beside: 'days without a break, to the last test',
    },
    {
      label: 'Began',
      answer: `=QT.HOLDSTART(${readings},{copper})`,
      format: moment,
      beside: 'the first reading in the band after the dip',
    },
    {
      label: '30 days are full on',
      answer: `=QT.HOLDENDS(${readings},{copper},30)`,
      format: moment,
      beside: 'if it holds until then',
    },
  ],
});

const refusal = form({
  at: 'G8',
  title: 'What a refusal looks like',
  columns,
  looks: { answer: 'refusal', beside: 'aside' },
  lines: [
    {
      label: 'An error on purpose',
      answer: `=QT.HOLDDAYS(${readings},"ionic")`,
      isRefused: true,
      beside: 'select H9 and read the line below the sheet',
    },
  ],
});

const card = form({
  at: 'G20',
  title: 'The card of this tank, for the plot and the audit',
  columns,
  looks: { given: 'inputText', beside: 'aside' },
  lines: [
    { label: 'Volume', given: '168 L', beside: 'net, with sump and pipes' },
    { label: 'Form', given: 'chelated', beside: 'sulfate, amine or chelated' },
    { label: 'Strength', given: '4 mg/mL', beside: 'of the solution, from its label: see QT.STRENGTH' },
    { label: 'Days', given: 30, beside: 'unbroken, as wanted' },
  ],
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
      columns: {
        ...{ From: { width: 152 }, To: { width: 140 }, Days: { width: 70 }, Enough: { width: 84 } },
        ...{ 'Ended by': { width: 132 }, Row: { width: 56 } },
      },
      room: 6,
    }),
    card,
  ],
});
