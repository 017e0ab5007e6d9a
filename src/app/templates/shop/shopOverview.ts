import { answerTable, bodies, type ChartPlan, form, line, sheetPlan, type SheetPlan, table } from '../plan/index.js';
import { asOf, rowsBelowTable } from '../sheets/asOf.js';
import { standingWords, wordTones } from '../sheets/tones.js';

const heading = 9;
const room = 16;
/** As many systems as the chart has room for. */
const drawn = 8;

const systems = answerTable({
  at: { row: heading, column: 0 },
  id: 'SYSTEMS',
  given: 'Log[#All],Cards[#All],AsOf',
  columns: {
    System: { width: 18, look: 'name' },
    'Last test': 19,
    Copper: 11,
    Status: 12,
    'Hold day': 10,
    'Days left': 10,
    'Do now': 38,
    'Hours since test': 12,
  },
  room,
  height: 20,
  headingHeight: 22,
  tones: [wordTones('Status', standingWords)],
});

const hours = '{Hours since test}';

/** An untested stretch is noted from 36 h on and warned of from 72 h on (common practice). */
const tests = table({
  beside: systems,
  key: 'tests',
  columns: [
    {
      heading: 'Test',
      kind: 'text',
      width: 12,
      formula: `=IF(ISNUMBER(${hours}),IF(${hours}>72,"overdue",IF(${hours}>36,"due","in time")),"")`,
    },
  ],
  room,
  body: bodies.plain,
  tones: [wordTones('Test', { due: 'due', overdue: 'overdue' })],
  ruled: 'first',
});
const columns = tests.lastColumn + 1;

/** The first systems of a column, which the chart draws. */
const firstOf = (key: string) => {
  const column = systems.columns.get(key) ?? NaN;
  return { firstRow: heading + 1, lastRow: heading + drawn, firstColumn: column, lastColumn: column };
};

const daysLeft: ChartPlan = {
  at: { row: 2, column: 4 },
  kind: 'columns',
  size: { width: 636, height: 218 },
  name: 'Days left',
  title: `Days left of the hold, the first ${drawn} systems`,
  alt: `A column for each of the first ${drawn} systems, as high as the days left of its hold. A system without a hold has none. The values are in the column Days left of the table.`,
  across: { title: 'System', format: 'General' },
  up: { title: 'Days left', format: '0', from: 0 },
  series: [
    {
      name: '{$Overview!SYSTEMS.Days left heading$}',
      across: '{$Overview!systems drawn$}',
      up: '{$Overview!days drawn$}',
      draws: 'columns',
    },
  ],
};

/** How every system stands, and what each needs now. */
export const shopOverview: SheetPlan = sheetPlan({
  name: 'Overview',
  tab: 'answer',
  page: { orientation: 'landscape', onOnePage: true },
  parts: [
    line('A1', 'How every system stands', 'title', { columns, height: 28 }),
    line('A3', 'The moment', 'section', { columns: 4, height: 18 }),
    { heights: [{ first: 3, last: 7, height: 34 }] },
    form({
      at: 'A4',
      looks: { answer: 'answer', beside: 'explained' },
      besideColumns: 2,
      lines: { asOf: ['As of', asOf.formula, '', 'yyyy-mm-dd hh:mm'] },
    }),
    line('A5', asOf.note, 'explained', { columns: 4, isMerged: true }),
    line('A6', rowsBelowTable, 'explained', {
      ...{ columns: 4, isMerged: true, key: 'rows' },
      rules: [{ when: 'LEFT({$rows$},3)<>"all"', tone: 'guard' }],
    }),
    line('A7', '', 'remark', { columns: 4, rules: [{ when: '{$without$}>0', tone: 'guard' }] }),
    form({
      at: 'A7',
      looks: { answer: 'answer', beside: 'remark' },
      besideColumns: 2,
      lines: {
        without: [
          'Without a system',
          '=COUNT(Log[Date and time])-SUMPRODUCT((Log[System]<>"")*ISNUMBER(Log[Date and time]))',
          'rows that no answer counts',
          '0',
        ],
      },
    }),
    line(
      { row: heading - 1, column: 0 },
      'One formula; a system is listed if it has a card or rows in the log',
      'section',
      { columns },
    ),
    systems,
    tests,
    { places: { 'systems drawn': firstOf('System'), 'days drawn': firstOf('Days left') }, charts: [daysLeft] },
  ],
});
