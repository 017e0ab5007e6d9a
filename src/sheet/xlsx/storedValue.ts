import { FileProblem } from '../zip/fileProblem.js';
import type { CellValue } from '../cell/cellValue.js';
import { serialOfIso } from '../book/isoDay.js';
import { unescapedText } from './escapedText.js';

/** What stands in a cell of a sheet part. */
interface StoredCell {
  readonly type: string | undefined;
  /** Undefined where the cell has no value: empty, or a formula that was never computed. */
  readonly text: string | undefined;
  /** The text of `<is>`. */
  readonly inline: string | undefined;
}

/** The value of a cell. A number that no spreadsheet could hold stays text, so that people see it. */
export function storedValue(cell: StoredCell, strings: readonly string[]): CellValue {
  const text = cell.text ?? '';
  switch (cell.type) {
    case 's':
      return text === '' ? null : sharedText(text, strings);
    case 'str':
      return cell.text === undefined ? null : unescapedText(text);
    case 'inlineStr':
      return unescapedText(cell.inline ?? '');
    case 'b':
      return text === '' ? null : text.trim() === '1' || text.trim() === 'true';
    case 'e':
      return text === '' ? null : { type: 'Error', basicValue: text };
    case 'd':
      return text === '' ? null : (serialOfIso(text) ?? text);
    case undefined:
    default:
      return text.trim() === '' ? null : numberIn(text);
  }
}

function numberIn(text: string): number | string {
  const number = Number(text);
  return Number.isFinite(number) ? number : text;
}

function sharedText(text: string, strings: readonly string[]): string {
  const found = strings[Number(text)];
  if (found === undefined) {
    throw new FileProblem('The file is damaged: a cell points to a text that is missing; get a fresh copy of it.');
  }
  return found;
}
