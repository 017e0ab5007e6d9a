import { isCellError, type CellValue } from '../cell/cellValue.js';
import { FileProblem } from '../zip/fileProblem.js';
import { escapedText } from '../xlsx/escapedText.js';

const longestText = 32_767;

export interface CellContent {
  /** The attribute `t`; null for numbers and blanks, which have none. */
  readonly type: string | null;
  /** `<v>` or `<is>`; '' for nothing. */
  readonly xml: string;
}

/**
 * A value as a cell of a sheet holds it.
 * @param computed Whether a formula gives the value, in this cell or in another that fills it.
 */
export function cellContent(value: CellValue, prefix: string, computed: boolean): CellContent {
  const v = (text: string): string => `<${prefix}v${blanksKept(text)}>${text}</${prefix}v>`;
  if (value === null) return { type: null, xml: '' };
  if (isCellError(value)) return { type: 'e', xml: v(escapedText(value.basicValue)) };
  if (typeof value === 'boolean') return { type: 'b', xml: v(value ? '1' : '0') };
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw new Error(`${value} is no value of a cell`);
    return { type: null, xml: v(String(value)) };
  }
  if (value.length > longestText) {
    throw new FileProblem(
      `A text of ${value.length} characters begins "${value.slice(0, 30)}", a cell holds at most ${longestText}: shorten it.`,
    );
  }
  const text = escapedText(value);
  if (computed) return { type: 'str', xml: v(text) };
  return { type: 'inlineStr', xml: `<${prefix}is><${prefix}t${blanksKept(text)}>${text}</${prefix}t></${prefix}is>` };
}

function blanksKept(text: string): string {
  return /^\s|\s$|[\n\t]|\s\s/.test(text) ? ' xml:space="preserve"' : '';
}
