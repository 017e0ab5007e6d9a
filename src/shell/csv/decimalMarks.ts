import { FileProblem } from '../zip/fileProblem.js';
import { cellName } from './cellName.js';
import type { CsvColumn, UnclearNumber, WrittenCell } from './csvColumn.js';
import { numberBy, type DecimalMark } from './numberBy.js';

export interface DecimalTerms {
  readonly columns: readonly CsvColumn[];
  readonly delimiter: string;
  /** As its owner says. */
  readonly asked: DecimalMark | null;
}

export interface DecimalMarks {
  /** By column: what "1,234" and "1.234" are read by; null where no cell needs it. */
  readonly marks: readonly (DecimalMark | null)[];
  /** A cell that shows the mark of the file; null: none does, or both are there. */
  readonly shown: (WrittenCell & { readonly mark: DecimalMark }) | null;
}

/** The mark before decimals in each column: what its own cells show, else those of the whole file, else it is refused. */
export function decimalMarks({ columns, delimiter, asked }: DecimalTerms): DecimalMarks {
  const shown = onlyMark(columns);
  const marks = columns.map((column) => {
    const [first] = column.numbers;
    if (first === undefined) return null;
    const mark = asked ?? onlyMark([column])?.mark ?? markOfFile(column, columns, delimiter);
    if (mark === null) throw new FileProblem(unclear(first));
    return mark;
  });
  return { marks, shown };
}

/** A column that shows both marks is not settled by others. */
function markOfFile(own: CsvColumn, columns: readonly CsvColumn[], delimiter: string): DecimalMark | null {
  if (own.shows['.'] !== null || own.shows[','] !== null) return null;
  const shown = onlyMark(columns);
  if (shown !== null) return shown.mark;
  const showsNone = columns.every(({ shows }) => shows['.'] === null && shows[','] === null);
  const isPointOnly = columns.every(({ numbers }) => numbers.every(({ mark }) => mark === '.'));
  // Where commas part the fields, decimals have a point.
  return showsNone && isPointOnly && delimiter === ',' ? '.' : null;
}

function onlyMark(columns: readonly CsvColumn[]): (WrittenCell & { readonly mark: DecimalMark }) | null {
  const first = (mark: DecimalMark): WrittenCell | null =>
    columns.find(({ shows }) => shows[mark] !== null)?.shows[mark] ?? null;
  const [point, comma] = [first('.'), first(',')];
  if (point !== null && comma !== null) return null;
  if (point !== null) return { ...point, mark: '.' };
  return comma === null ? null : { ...comma, mark: ',' };
}

function unclear(cell: UnclearNumber): string {
  const [decimals, thousands] = [numberBy(cell.text, cell.mark), numberBy(cell.text, cell.mark === '.' ? ',' : '.')];
  return (
    `In ${cellName(cell)} "${cell.text.trim()}" may be ${decimals} or ${thousands}, and nothing in the file says which; ` +
    `write it as ${decimals.toFixed(4)} or ${thousands}, or say whether decimals have a point or a comma`
  );
}
