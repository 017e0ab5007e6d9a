import {
  answerTableColumns,
  form,
  type FormLine,
  line,
  sheetPlan,
  type SheetPlan,
  type TableColumn,
} from '../plan/index.js';
import { doNow } from '../sheets/doNow.js';
import { standingWords, wordRules } from '../sheets/tones.js';
import { cardColumns } from './shopCards.js';

const columns = 6;
const cardAt = 3;
const standingAt = cardAt + cardColumns.length + 2;
const standings = answerTableColumns('SYSTEMS').slice(1);
const tasksAt = standingAt + standings.length + 5;
const looks = { given: 'input', answer: 'answer', beside: 'remark' } as const;

/**
 * The shared log with the rows of other systems made empty, so that a row named in an answer is the row of the sheet Log.
 * An empty cell stays empty and is not made 0.
 */
export const itsRows =
  'IF((TRIM(Log[[#All],[System]])=Chosen)+(Log[[#All],[System]]="System"),IF(ISBLANK(Log[#All]),"",Log[#All]),"")';

/** Of an empty cell of the cards nothing is made, not a 0. */
const cardValue = (name: string): string => {
  const cell = `INDEX(Cards[${name}],MATCH(Chosen,Cards[System],0))`;
  return `=IF(${cell}="","",${cell})`;
};

const itsRow = 'MATCH(Chosen,{$Overview!SYSTEMS.System$},0)';

/** A line for each column of a table, with its value for the chosen system. */
function linesOf(
  columns: readonly TableColumn[],
  answer: (column: TableColumn, at: number) => string,
): Record<string, FormLine> {
  const lines = columns.map((column, i): [string, FormLine] => {
    const { heading, kind, format = kind === 'time' ? 'yyyy-mm-dd hh:mm' : '' } = column;
    const tones = heading === 'Status' ? { tones: wordRules('{$Status$}', standingWords) } : {};
    return [heading, [heading, answer(column, i), '', { ...(format === '' ? {} : { format }), ...tones }]];
  });
  return Object.fromEntries(lines);
}

/** The names of the systems, as a list to choose from. */
const names = '{$Systems!cards.System$}';
const choice = {
  allows: { kind: 'listFrom', cells: names },
  prompt: 'Choose a system from the sheet Systems.',
  refusal: 'Choose a name from the list; add systems on the sheet Systems.',
} as const;

/** One system of the log, chosen from a list: its card, how it stands, what it needs. */
export const oneSystem: SheetPlan = sheetPlan({
  name: 'One system',
  tab: 'answer',
  page: { orientation: 'landscape' },
  parts: [
    line('A1', 'One system: choose it in the blue cell', 'title', { columns, height: 28 }),
    line('A2', 'The sheets Audit, Ready, Fish, Deaths and Chart follow the system chosen here.', 'note', {
      columns,
      isMerged: true,
    }),
    form({
      at: { row: cardAt, column: 0 },
      title: 'Its card, from the sheet Systems',
      key: 'card',
      columns,
      besideColumns: 4,
      looks,
      height: 17,
      lines: {
        chosen: ['System', 'Q4', '', { takes: choice }],
        ...linesOf(cardColumns.slice(1), ({ heading }) => cardValue(heading)),
      },
    }),
    line(
      { row: cardAt + 1, column: 2 },
      `=IF(COUNTIF(${names},Chosen)=0,"no card on the sheet Systems has this name","")`,
      'remark',
      { key: 'no card', rules: [{ when: '{$no card$}<>""', tone: 'guard' }] },
    ),
    form({
      at: { row: standingAt, column: 0 },
      title: 'How it stands, from the sheet Overview',
      columns,
      besideColumns: 4,
      looks,
      height: 17,
      lines: linesOf(standings, (_, i) => `=IFERROR(INDEX({$Overview!SYSTEMS$},${itsRow},${i + 2}),"")`),
    }),
    form({
      at: { row: standingAt + standings.length + 1, column: 0 },
      besideColumns: 3,
      looks,
      height: 17,
      lines: {
        band: ['Band of its copper', '=QT.BAND({$Form$})', 'low and high limit, mg/L', { format: '0.00', fills: 2 }],
      },
    }),
    ...doNow(`${itsRows},ItsCard,AsOf`, tasksAt),
  ],
});
