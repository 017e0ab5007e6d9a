import type { ChartPlan } from '../chartPlan.js';
import type { SheetPlan } from '../templatePlan.js';

const heading = 30;
const first = heading + 1;
const last = heading + 400;

interface ChartTerms {
  readonly levels: string;
  /** The limits of the band, as cells of another sheet. */
  readonly low: string;
  readonly high: string;
  readonly whose: string;
}

/** The level that the log explains, the readings and the band as a chart, and below it the table behind it. */
export function chartSheet(terms: ChartTerms): SheetPlan {
  return {
    name: 'Chart',
    tab: 'answer',
    widths: [20, 16, 16, 16, 16, 16, 3, 11, 11, 11, 11, 11, 3, 11, 11, 11],
    heights: [
      { rows: [1, 1], height: 28 },
      { rows: [2, 2], height: 26 },
      { rows: [3, heading - 2], height: 15 },
    ],
    blocks: blocks(terms),
    arrays: [`H${first}`, `I${first}`],
    looks,
    formats,
    merged: ['A2:F2'],
    conditions: [
      { range: `A${first}:F${last}`, rules: [{ when: `$A${first}<>""`, tone: 'row' }] },
      {
        range: `H${first}:L${last}`,
        rules: [
          { when: `$A${first}=""`, tone: 'unseen' },
          { when: `ISNA(H${first})`, tone: 'unseen' },
        ],
      },
    ],
    charts: [chart(terms.whose)],
    page: { orientation: 'landscape', area: `A1:F${heading - 2}` },
  };
}

function blocks({ levels, low, high, whose }: ChartTerms): SheetPlan['blocks'] {
  const across = `IF(ISNUMBER(A${first}:A${last}),A${first}:A${last},MAX(A${first}:A${last}))`;
  const up = `IF(ISNUMBER(B${first}:E${last}),B${first}:E${last},NA())`;
  const ends = ['MIN', 'MAX'].map((end) => [`=${end}(H${first}:H${last})`, `=${low}`, `=${high}`]);
  const helper = 'For the chart: the table with #N/A where it holds no number, which is not drawn';
  return [
    { at: 'A1', cells: [[`The level of ${whose}, from its doses, changes and readings`]] },
    { at: 'A2', cells: [[lead]] },
    {
      at: `A${heading - 1}`,
      cells: [[`The table behind the chart, which draws its first ${last - heading} rows: one formula, mg/L`]],
    },
    { at: `A${heading}`, cells: [[levels]] },
    { at: `H${heading - 1}`, cells: [[helper]] },
    { at: `H${heading}`, cells: [['When', 'Expected level', 'Low (95 %)', 'High (95 %)', 'Reading']] },
    { at: `H${first}`, cells: [[`=${across}`, `=${up}`]] },
    { at: `N${heading}`, cells: [['When', 'Band from', 'Band to']] },
    { at: `N${first}`, cells: ends },
  ];
}

const looks: SheetPlan['looks'] = [
  { range: 'A1:F1', look: 'title' },
  { range: 'A2:F2', look: 'note' },
  { range: `A${heading - 1}:F${heading - 1}`, look: 'section' },
  { range: `A${heading}`, look: 'heading' },
  { range: `B${heading}:F${heading}`, look: 'numberHeading' },
  { range: `A${first}:A${last}`, look: 'spill' },
  { range: `B${first}:F${last}`, look: 'spillNumber' },
  { range: `H${heading - 1}`, look: 'helperNote' },
  { range: `H${heading}:L${last}`, look: 'helper' },
  { range: `N${heading}:P${first + 1}`, look: 'helper' },
];

const formats: SheetPlan['formats'] = [
  { range: `A${first}:A${last}`, format: 'yyyy-mm-dd hh:mm' },
  { range: `B${first}:F${last}`, format: '0.00' },
  { range: `H${first}:H${last}`, format: 'yyyy-mm-dd' },
  { range: `I${first}:L${last}`, format: '0.00' },
  { range: `N${first}:N${first + 1}`, format: 'yyyy-mm-dd' },
  { range: `O${first}:P${first + 1}`, format: '0.00' },
];

const lead =
  'Diamonds are readings; the line is the level that doses, changes and loss explain, the dotted lines its band of 95 %; ' +
  'the dashed lines are the limits of the therapeutic band. A reading far off the line is a slip, a wrong volume or a loss.';

function chart(whose: string): ChartPlan {
  const cells = (column: string): string => `Chart!$${column}$${first}:$${column}$${last}`;
  const limit = (column: string): string => `Chart!$${column}$${first}:$${column}$${first + 1}`;
  const name = (column: string): string => `Chart!$${column}$${heading}`;
  const across = cells('H');
  return {
    at: 'A4',
    kind: 'scatter',
    size: { width: 800, height: 440 },
    name: 'Copper level',
    title: `Copper, ${whose}`,
    alt: `Copper in mg/L over time: readings as diamonds, the level that the log explains as a line with dotted lines of 95 %, the limits of the therapeutic band as dashed lines. The values stand in the table from A${heading} on.`,
    across: { title: 'Date (month-day)', format: 'mm-dd' },
    up: { title: 'Copper, mg/L', format: '0.0', from: 0 },
    series: [
      { name: name('I'), across, up: cells('I'), draws: 'line' },
      { name: name('J'), across, up: cells('J'), draws: 'thinLine' },
      { name: name('K'), across, up: cells('K'), draws: 'thinLine' },
      { name: name('L'), across, up: cells('L'), draws: 'marks' },
      { name: name('O'), across: limit('N'), up: limit('O'), draws: 'limit' },
      { name: name('P'), across: limit('N'), up: limit('P'), draws: 'limit' },
    ],
  };
}
