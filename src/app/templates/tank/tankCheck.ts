import { answerTable, line, sheetPlan, type SheetPlan, type ToneRule } from '../plan/index.js';
import { cardEntries } from '../sheets/cardEntries.js';
import { tankHeadings } from './tankLogRows.js';

const heading = 4;

/** What is not known stands out; the others have a line below them. */
function understood(name: string, readAs: string): ToneRule[] {
  return [
    { when: `AND({$${name}}<>"",LEFT({$${readAs}},7)="unknown")`, tone: 'guard' },
    { when: `{$${name}}<>""`, tone: 'row' },
  ];
}

const card = answerTable({
  at: { row: heading, column: 0 },
  id: 'CARD',
  given: 'Card',
  columns: { Name: 26, Value: 32, Unit: 10, 'Read as': 18 },
  // Room for rows that a keeper adds.
  room: cardEntries.length + 12,
  headingHeight: 20,
  tones: [{ rules: understood('Name', 'Read as') }],
});
const headings = answerTable({
  at: { row: heading, column: card.lastColumn + 2 },
  id: 'HEADINGS',
  given: 'Log[#All]',
  columns: { Heading: 22, 'Read as': 18, Unit: 10 },
  room: tankHeadings.length + 15,
  tones: [{ rules: understood('Heading', 'Read as') }],
});
const columns = headings.lastColumn + 1;

/** Whether card and headings are understood as they were meant. */
export const tankCheck: SheetPlan = sheetPlan({
  name: 'Check',
  tab: 'answer',
  frozen: { rows: heading + 1 },
  page: { orientation: 'landscape' },
  parts: [
    line('A1', 'Are the card and the log understood?', 'title', { columns, height: 28 }),
    line(
      'A2',
      'Look here after changing a name on the card or a heading of the log: what is unknown is not counted.',
      'note',
      { columns, isMerged: true },
    ),
    line({ row: heading - 1, column: 0 }, 'The card', 'section', { columns: card.columns.size }),
    card,
    line({ row: heading - 1, column: headings.firstColumn }, 'The headings of the log', 'section', {
      columns: headings.columns.size,
    }),
    headings,
  ],
});
