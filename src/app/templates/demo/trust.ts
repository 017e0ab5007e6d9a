import { answerTable, bodies, form, line, type Part, table, type TableColumn } from '../plan/index.js';
import { demoSheet } from './demoSheet.js';
import { keeperReadings } from './keeperLog.js';

const meters = [0.05, 0.1, 0.2, 0.3];
const drifts = [0.02, 0.05, 0.1];
/** The columns beside the forms, to the end of the sheet. */
const columns = 6;
const chanceFormat = '[>=0.995]"over 99%";0%';

const meter = form({
  at: 'A3',
  title: '1  The meter',
  lines: {
    copper: ['Copper in the tank', 'chelated'],
    accuracy: ['Good to ±', 0.1, 'mg/L', '0.00'],
    percent: ['and this much of the reading', 0.05, '', '0%'],
    from: ['Reads from', 0, 'mg/L', '0.00'],
    to: ['to', 5, 'mg/L', '0.00'],
    reading: ['Reading to keep', '=QT.AIM({copper},{accuracy},{percent})', 'mg/L', '0.000'],
  },
});

const holdOfTheLog = form({
  at: 'A11',
  title: '2  The hold of tank Q2, from the sheet Log',
  lines: {
    held: ['Held without a break', `=QT.HOLDDAYS(${keeperReadings},{copper})`, 'days', '0.00'],
    chance: [
      'Chance that it never was below the band',
      `=QT.HOLDCHANCE(${keeperReadings},{copper},{accuracy},{percent})`,
      '',
      chanceFormat,
    ],
  },
});

const otherMeter = form({
  at: 'A17',
  title: '3  A second meter: it reads from 0.21',
  lines: {
    band: ['Band of copper sulfate, low and high', [0.15, 0.2], '', '0.00'],
    'other accuracy': ['Good to ±', 0.02, 'mg/L', '0.00'],
    'other from': ['Reads from', 0.21, 'mg/L', '0.00'],
    'other to': ['to', 5, 'mg/L', '0.00'],
  },
});

/** The same hold by other meters and with a level that wanders more, a column for each drift. */
const others: readonly Part[] = [
  line('E8', 'The same hold with a better or a worse meter, and a level that wanders more', 'section', { columns }),
  line('E9', 'Meter good to ±', 'numberHeading'),
  line('F9', 'Reading to keep', 'numberHeading'),
  line('G9', 'Chance, if the level wanders in a day by, mg/L', 'heading', { columns: drifts.length, isMerged: true }),
  table({
    at: 'E10',
    key: 'meters',
    columns: [
      { key: 'accuracy', heading: 'mg/L', kind: 'number', look: 'inputNumber', format: '0.00' },
      {
        key: 'aim',
        heading: 'mg/L',
        kind: 'number',
        format: '0.000',
        formula: '=QT.AIM({$copper$},{accuracy},{$percent$})',
      },
      ...drifts.map((drift): TableColumn => {
        const given = `${keeperReadings},{$copper$},{$accuracy},{$percent$},{meters.${drift} heading$}`;
        return {
          ...{ heading: String(drift), headingNumber: drift, headingLook: 'inputNumber', headingFormat: '0.00' },
          ...{ kind: 'share', format: chanceFormat, formula: `=QT.HOLDCHANCE(${given})` },
        };
      }),
    ],
    rows: meters.map((each) => [each]),
    room: meters.length,
    body: bodies.answer,
  }),
];

const fits = (row: number, key: string, given: string): Part[] => [
  line({ row, column: 4 }, 'What it can show of the band', 'section', { columns }),
  line({ row: row + 1, column: 4 }, '', 'heading', { columns }),
  line({ row: row + 2, column: 4 }, '', 'cell', { columns }),
  answerTable({ at: { row: row + 1, column: 4 }, id: 'METERFITS', key, given, room: 1 }),
];

/** What a meter can show of the band, and how likely the hold is whole. */
export const trust = demoSheet({
  name: 'Trust',
  title: 'How far to trust the readings: fill in the blue cells, the answers are in bold',
  widths: [262, 104, 104, 22, 124, 124, 124, 124, 124, 250],
  parts: [
    meter,
    ...fits(2, 'first meter', '{copper},{from},{to},{accuracy},{percent}'),
    holdOfTheLog,
    line(
      'A14',
      'A chance, not a promise: it covers random errors only, not a meter that is always wrong the same way.',
      'caption',
      { columns: 3, rows: 2, isMerged: true },
    ),
    ...others,
    otherMeter,
    ...fits(16, 'second meter', '{band},{other from},{other to},{other accuracy}'),
    line(
      'E20',
      'Inside this band it reads nothing: no hold can be shown with it. Take a test with a lower range.',
      'aside',
    ),
  ],
});
