import { FileProblem } from '../zip/fileProblem.js';
import { cellName, type CsvColumn, type UnclearNumber, type WrittenCell } from './csvCells.js';
import { numberBy, type DecimalMark } from './numberText.js';

interface DecimalTerms {
  readonly columns: readonly CsvColumn[];
  readonly delimiter: string;
  /** What the owner of the file says. */
  readonly asked: DecimalMark | null;
}

export interface DecimalMarks {
  /** By column: the decimal mark for "1,234" and "1.234"; null where no cell needs it. */
  readonly marks: readonly (DecimalMark | null)[];
  /** A cell that shows the file's mark; null: none does, or the file shows both. */
  readonly shown: (WrittenCell & { readonly mark: DecimalMark }) | null;
}

/** The mark before decimals in each column: what its own cells show, else what the whole file shows. An ambiguous file is refused. */
export function decimalMarks({ columns, delimiter, asked }: DecimalTerms): DecimalMarks {
  const ofFile = markOfFile(columns, delimiter);
  const marks = columns.map((column) => {
    const [first] = column.numbers;
    if (first === undefined) return null;
    // Other columns cannot settle a column that shows both marks.
    const mark = asked ?? (showsNone([column], 'shows') ? ofFile : (onlyMark([column], 'shows')?.mark ?? null));
    if (mark === null) throw new FileProblem(unclear(first));
    return mark;
  });
  const from = showsNone(columns, 'shows') ? 'tells' : 'shows';
  return { marks, shown: onlyMark(columns, from) };
}

/** By its plain numbers; else by those with a unit; else, where commas separate the fields, decimals have a point. */
function markOfFile(columns: readonly CsvColumn[], delimiter: string): DecimalMark | null {
  for (const from of ['shows', 'tells'] as const) {
    if (!showsNone(columns, from)) return onlyMark(columns, from)?.mark ?? null;
  }
  const isPointOnly = columns.every(({ numbers }) => numbers.every(({ mark }) => mark === '.'));
  return isPointOnly && delimiter === ',' ? '.' : null;
}

function showsNone(columns: readonly CsvColumn[], from: 'shows' | 'tells'): boolean {
  return columns.every((column) => column[from]['.'] === null && column[from][','] === null);
}

function onlyMark(
  columns: readonly CsvColumn[],
  from: 'shows' | 'tells',
): (WrittenCell & { readonly mark: DecimalMark }) | null {
  const first = (mark: DecimalMark): WrittenCell | null =>
    columns.find((column) => column[from][mark] !== null)?.[from][mark] ?? null;
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
