import { type Book, FileProblem } from '../../sheet/index.js';
import { lastRow } from './filledCells.js';
import type { ShownFile } from './shownFile.js';

/** What was read, for the line beside the buttons. */
export function fileSentence({ name, formulas }: ShownFile, book: Book): string {
  const sheets = book.sheets.length === 1 ? '1 sheet' : `${book.sheets.length} sheets`;
  const rows = book.sheets.reduce((sum, sheet) => sum + lastRow(sheet) + 1, 0);
  const kept = [...formulas.values()].filter(({ plain }) => plain === null).length;
  return [
    `${name}: ${sheets}, ${rows.toLocaleString('en')} rows, read on this machine and sent nowhere.`,
    ...book.remarks,
    ...(kept === 0
      ? []
      : [`The page cannot compute ${kept === 1 ? '1 formula' : `${kept} formulas`}, so the stored value is shown.`]),
  ].join(' ');
}

/** Why a file could not be read or written, as one sentence. */
export function refusalSentence(name: string, fault: unknown): string {
  const why = fault instanceof Error ? fault.message : String(fault);
  const sentence = fault instanceof FileProblem ? `${name}: ${why}` : `${name} could not be read or written: ${why}`;
  return sentence.endsWith('.') ? sentence : `${sentence}.`;
}
