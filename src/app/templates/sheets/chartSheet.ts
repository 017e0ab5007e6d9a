import {
  answerTable,
  type ChartPlan,
  line,
  type Part,
  sheetPlan,
  type SheetPlan,
  table,
  type TablePart,
} from '../plan/index.js';

const heading = 29;
const room = 400;
const corner = { firstRow: 0, firstColumn: 0 };
const helper = { text: 'helper', number: 'helper' } as const;
const level = { kind: 'number', width: 11, format: '0.00' } as const;
const day = { kind: 'time', width: 11, format: 'yyyy-mm-dd' } as const;

interface ChartTerms {
  /** The arguments of LEVELS. */
  readonly given: string;
  /** The limits of the band, as places of another sheet. */
  readonly low: string;
  readonly high: string;
  readonly whose: string;
}

/** The level that the log explains, the readings and the band as a chart, and below it the table behind it. */
export function chartSheet({ given, low, high, whose }: ChartTerms): SheetPlan {
  const levels = answerTable({
    at: { row: heading, column: 0 },
    id: 'LEVELS',
    given,
    columns: { When: 20, Expected: 16, Low: 16, High: 16, Reading: 16, 'Off by': 16 },
    room,
    ruled: 'first',
  });
  const columns = levels.columns.size;
  return sheetPlan({
    name: 'Chart',
    tab: 'answer',
    page: { orientation: 'landscape', area: { ...corner, lastRow: heading - 2, lastColumn: columns - 1 } },
    parts: [
      line('A1', `The level of ${whose}, from its doses, changes and readings`, 'title', { columns, height: 28 }),
      line('A2', lead, 'note', { columns, isMerged: true, height: 26 }),
      { heights: [{ first: 2, last: heading - 2, height: 15 }] },
      line(
        { row: heading - 1, column: 0 },
        `The table behind the chart, which draws its first ${room} rows: one formula, mg/L`,
        'section',
        { columns },
      ),
      levels,
      ...behindChart(levels, { low, high }),
      { charts: [chart(whose)] },
    ],
  });
}

/** The levels that the chart draws: numbers, or #N/A, which is not drawn. */
function drawnLevels(levels: TablePart): TablePart {
  return table({
    at: { row: heading, column: levels.lastColumn + 2 },
    key: 'drawn',
    columns: [
      { heading: 'When', ...day },
      { heading: 'Expected level', ...level },
      { heading: 'Low (95 %)', ...level },
      { heading: 'High (95 %)', ...level },
      { heading: 'Reading', ...level },
    ],
    room,
    body: helper,
    headings: helper,
    arrays: [
      { on: 'When', formula: '=IF(ISNUMBER({LEVELS.When}),{LEVELS.When},MAX({LEVELS.When}))' },
      { on: 'Expected level', formula: '=IF(ISNUMBER({levels drawn}),{levels drawn},NA())' },
    ],
    tones: [
      {
        rules: [
          { when: '{$LEVELS.When first}=""', tone: 'unseen' },
          { when: 'ISNA({When})', tone: 'unseen' },
        ],
      },
    ],
  });
}

/** What the chart draws: levels, and the limits of the band. */
function behindChart(levels: TablePart, { low, high }: Pick<ChartTerms, 'low' | 'high'>): Part[] {
  const drawn = drawnLevels(levels);
  const columns = {
    firstColumn: levels.columns.get('Expected') ?? NaN,
    lastColumn: levels.columns.get('Reading') ?? NaN,
  };
  return [
    { places: { 'levels drawn': { firstRow: heading + 1, lastRow: heading + room, ...columns } } },
    line(
      { row: heading - 1, column: drawn.firstColumn },
      'For the chart: the table with #N/A, which is not drawn, where it has no number',
      'helperNote',
    ),
    drawn,
    table({
      at: { row: heading, column: drawn.lastColumn + 2 },
      key: 'ends',
      columns: [
        { heading: 'When', ...day },
        { heading: 'Band from', ...level },
        { heading: 'Band to', ...level },
      ],
      rows: ['MIN', 'MAX'].map((end) => [`=${end}({drawn.When})`, `=${low}`, `=${high}`]),
      room: 2,
      body: helper,
      headings: helper,
    }),
  ];
}

const lead =
  'Diamonds are readings. The line is the level that doses, changes and loss account for; the dotted lines are its 95 % band. ' +
  'The dashed lines are the limits of the therapeutic band. A reading far off the line is a slip, a wrong volume or a loss.';

function chart(whose: string): ChartPlan {
  const series = (of: string, column: string, draws: 'marks' | 'line' | 'thinLine' | 'limit') => ({
    name: `{$Chart!${of}.${column} heading$}`,
    across: `{$Chart!${of}.When$}`,
    up: `{$Chart!${of}.${column}$}`,
    draws,
  });
  return {
    at: { row: 3, column: 0 },
    kind: 'scatter',
    size: { width: 800, height: 440 },
    name: 'Copper level',
    title: `Copper, ${whose}`,
    alt: `Copper in mg/L over time: readings as diamonds, the level that the log accounts for as a line with its 95 % band as dotted lines, the limits of the therapeutic band as dashed lines. The values are in the table from {LEVELS.When heading} on.`,
    across: { title: 'Date (month-day)', format: 'mm-dd' },
    up: { title: 'Copper, mg/L', format: '0.0', from: 0 },
    series: [
      series('drawn', 'Expected level', 'line'),
      series('drawn', 'Low (95 %)', 'thinLine'),
      series('drawn', 'High (95 %)', 'thinLine'),
      series('drawn', 'Reading', 'marks'),
      series('ends', 'Band from', 'limit'),
      series('ends', 'Band to', 'limit'),
    ],
  };
}
