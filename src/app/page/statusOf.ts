import { cellName, type FunctionEntry } from '../calls/functionCatalogue.js';

/** What is known of the selected cell. */
export interface SelectedCell {
  readonly address: string;
  /** What the cell shows, as text. */
  readonly value: string;
  readonly formula: string;
  /** The cell shows this error, or none. */
  readonly error: string | undefined;
  /** The sentence the function gave with it. */
  readonly reason: string | undefined;
  /** The formula as an opened file has it, where the grid got another text or none. */
  readonly written?: string | undefined;
  /** The cell whose table covers this one, where it is another. */
  readonly tableFrom: string | undefined;
}

export interface Status {
  readonly kind: 'refusal' | 'hint';
  readonly text: string;
}

/** Errors the sheet itself makes, in plain words. */
const meaning: Record<string, string> = {
  '#NAME?': 'a name in this formula is not known here; check its spelling, the functions begin with QT.',
  '#SPILL!': 'the table needs free cells to the right and below; empty them or move the formula',
  '#REF!': 'the formula points to cells that are gone',
  '#DIV/0!': 'a division by zero',
  '#CYCLE!': 'the formula depends on its own cell',
};

/** The line below the grid: why the selected cell refuses, or what its function does. */
export function statusOf(cell: Omit<SelectedCell, 'address' | 'value'>, entries: readonly FunctionEntry[]): Status {
  if (cell.error !== undefined) {
    const why = cell.reason !== undefined && cell.reason !== '' ? cell.reason : meaning[cell.error];
    return { kind: 'refusal', text: why ?? 'no reason is known for this error' };
  }
  if (cell.formula === '' && cell.written !== undefined)
    return { kind: 'hint', text: `The value stored in the file: this sheet cannot compute ${cell.written}` };
  const entry = entries.find((one) => cell.formula.toUpperCase().includes(`${cellName(one)}(`));
  if (entry !== undefined) {
    const table = cell.tableFrom === undefined ? '' : `Part of the table from ${cell.tableFrom}. `;
    const written = cell.written === undefined ? '' : `  In the file: ${cell.written}`;
    return { kind: 'hint', text: `${table}${signature(entry)}  ${entry.description ?? ''}${written}` };
  }
  if (cell.formula !== '') return { kind: 'hint', text: cell.written ?? cell.formula };
  return {
    kind: 'hint',
    text: 'Select an answer to read what its function does, or an error to read the reason behind it.',
  };
}

function signature(entry: FunctionEntry): string {
  const names = entry.parameters.map((parameter) =>
    parameter.optional === true ? `[${parameter.name}]` : parameter.name,
  );
  return `${cellName(entry)}(${names.join(', ')})`;
}
