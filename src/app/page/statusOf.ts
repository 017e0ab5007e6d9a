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
  '#NAME?': 'this formula contains an unknown name; check the spelling (the functions begin with QT.)',
  '#SPILL!': 'the table needs empty cells to the right and below; clear them or move the formula',
  '#REF!': 'the formula refers to cells that no longer exist',
  '#DIV/0!': 'the formula divides by zero',
  '#CYCLE!': 'the formula depends on its own cell',
};

/** The line below the grid: why the selected cell refuses, or what its function does. */
export function statusOf(cell: Omit<SelectedCell, 'address' | 'value'>, entries: readonly FunctionEntry[]): Status {
  if (cell.error !== undefined) {
    const why = cell.reason !== undefined && cell.reason !== '' ? cell.reason : meaning[cell.error];
    return { kind: 'refusal', text: why ?? 'the reason for this error is not known' };
  }
  if (cell.formula === '' && cell.written !== undefined)
    return { kind: 'hint', text: `This is the value stored in the file; the page cannot compute ${cell.written}` };
  const entry = entries.find((one) => cell.formula.toUpperCase().includes(`${cellName(one)}(`));
  if (entry !== undefined) {
    const table = cell.tableFrom === undefined ? '' : `Part of the table from ${cell.tableFrom}. `;
    const written = cell.written === undefined ? '' : `  In the file: ${cell.written}`;
    return { kind: 'hint', text: `${table}${signature(entry)}  ${entry.description ?? ''}${written}` };
  }
  if (cell.formula !== '') return { kind: 'hint', text: cell.written ?? cell.formula };
  return {
    kind: 'hint',
    text: 'Select an answer to see what its function does, or an error to see the reason.',
  };
}

function signature(entry: FunctionEntry): string {
  const names = entry.parameters.map((parameter) =>
    parameter.optional === true ? `[${parameter.name}]` : parameter.name,
  );
  return `${cellName(entry)}(${names.join(', ')})`;
}
