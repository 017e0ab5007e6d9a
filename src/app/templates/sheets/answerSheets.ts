import { answerTable, line, type SheetPlan, sheetPlan } from '../plan/index.js';
import { standingWords, wordTones } from './tones.js';

interface AnswerSheetTerms extends Omit<Parameters<typeof answerTable>[0], 'at' | 'ruled'> {
  readonly name: string;
  readonly title: string;
  readonly lead: string;
  readonly orientation?: 'portrait';
}

const heading = { row: 3, column: 0 };

/** A sheet of one table, which one formula in A4 fills. */
function answerSheet({ name, title, lead, orientation, ...answer }: AnswerSheetTerms): SheetPlan {
  const answers = answerTable({ at: heading, headingHeight: 20, ...answer, ruled: 'first' });
  const columns = answers.columns.size;
  return sheetPlan({
    name,
    tab: 'answer',
    frozen: { rows: heading.row + 1 },
    page: { orientation: orientation ?? 'landscape', repeated: { first: heading.row, last: heading.row } },
    parts: [
      line('A1', title, 'title', { columns, height: 28 }),
      line('A2', lead, 'note', { columns, isMerged: true }),
      answers,
    ],
  });
}

/** Every reading in time order, with its standing and its day of the hold. */
export function daysSheet(given: string): SheetPlan {
  return answerSheet({
    name: 'Days',
    title: 'Every reading, with its place in the hold',
    lead: 'One formula, in A4. Row is the row of the sheet Log; of a range such as 2.0-2.2 the low end counts for the hold.',
    id: 'HOLDROWS',
    given,
    columns: { When: 18, Copper: 10, Status: 12, 'Hold day': 10, 'Days done': 12, Row: 8, Note: 56 },
    room: 300,
    tones: [wordTones('Status', standingWords)],
    orientation: 'portrait',
  });
}

/** Every hold, and what ended it. */
export function breaksSheet(given: string): SheetPlan {
  return answerSheet({
    name: 'Breaks',
    title: 'Every hold, and what ended it',
    lead: 'One formula, in A4. One reading below the band and the hold begins again. Row is the row of the sheet Log at which it ended.',
    id: 'HOLDS',
    given,
    columns: { From: 20, To: 20, Days: 10, Enough: 14, 'Ended by': 28, Row: 10 },
    room: 60,
    tones: [wordTones('Enough', { yes: 'done', running: 'inside', no: 'low' })],
    orientation: 'portrait',
  });
}

/** The audit of a log. Its rows have room for three lines, which the longest findings take. */
export function auditSheet(given: string, lead: string): SheetPlan {
  return answerSheet({
    name: 'Audit',
    title: 'The audit: the verdict, then dangers, warnings and notes',
    lead,
    id: 'AUDIT',
    given,
    columns: {
      Severity: 13,
      When: 18,
      Row: 8,
      Finding: { width: 62, look: 'smallText' },
      Why: { width: 56, look: 'smallText' },
      Source: { width: 24, look: 'smallText' },
    },
    room: 80,
    height: 37,
    tones: [wordTones('Severity', { verdict: 'verdict', danger: 'overdue', warning: 'due' })],
  });
}

/** The gates before fish are let go, the verdict in the last row. */
export function readySheet(given: string): SheetPlan {
  return answerSheet({
    name: 'Ready',
    title: 'May the fish go?',
    lead: 'One formula, in A4. Every gate must be met; the verdict is in the last row. An aquatic veterinarian and local law come before it.',
    id: 'READY',
    given,
    columns: {
      Gate: 24,
      Met: 10,
      Since: 18,
      Why: { width: 78, look: 'smallText' },
    },
    room: 16,
    height: 30,
    tones: [
      wordTones('Met', { yes: 'inside', no: 'low' }),
      { rules: [{ when: 'AND({$Gate}<>"",{$Met}="")', tone: 'verdict' }] },
    ],
  });
}

/** Each fish or group with its own days. */
export function fishSheet(given: string): SheetPlan {
  return answerSheet({
    name: 'Fish',
    title: 'The fish: each has its own days',
    lead: 'One formula, in A4. A fish without an arrival in the log has no days; the days of dead, moved and sold fish end there.',
    id: 'FISHDAYS',
    given,
    columns: {
      Fish: 34,
      Arrived: 20,
      'Hold days': 12,
      'Ready on': 20,
      Note: { width: 54, look: 'smallText' },
    },
    room: 80,
    height: 26,
  });
}

/** The deaths of each lot beside the published yardstick. */
export function deathsSheet(given: string): SheetPlan {
  return answerSheet({
    name: 'Deaths',
    title: 'Deaths by lot, beside the published yardstick',
    lead: 'One formula, in A4. Where the log names no lots, all fish count as one lot.',
    id: 'DEATHS',
    given,
    columns: {
      Lot: { width: 70, look: 'smallText' },
      'Came in': 11,
      'Dead on arrival': 12,
      Raising: 11,
      Hold: 11,
      Observation: 13,
      Left: 11,
      '% after arrival': 11,
    },
    room: 40,
    height: 37,
    headingHeight: 32,
  });
}
