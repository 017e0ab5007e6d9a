import { answerTable } from '../plan/answerTable.js';
import { line } from '../plan/line.js';
import { sheetPlan } from '../plan/sheetPlan.js';
import type { SheetPlan } from '../plan/templatePlan.js';

interface AnswerSheetTerms extends Omit<Parameters<typeof answerTable>[0], 'at' | 'ruled'> {
  readonly name: string;
  readonly title: string;
  readonly lead: string;
  readonly orientation: 'portrait' | 'landscape';
}

const heading = { row: 3, column: 0 };

/** A sheet of one table, which one formula in A4 fills. */
export function answerSheet({ name, title, lead, orientation, ...answer }: AnswerSheetTerms): SheetPlan {
  const answers = answerTable({ at: heading, headingHeight: 20, ...answer, ruled: 'first' });
  const columns = answers.columns.size;
  return sheetPlan({
    name,
    tab: 'answer',
    frozen: { rows: heading.row + 1 },
    page: { orientation, repeated: { first: heading.row, last: heading.row } },
    parts: [
      line('A1', title, 'title', { columns, height: 28 }),
      line('A2', lead, 'note', { columns, isMerged: true }),
      answers,
    ],
  });
}
