import { cellEdit } from './cellEdit.js';
import type { CellWrite } from './cellWrite.js';
import { newCell } from './newCell.js';
import type { SheetContext } from './workbookContext.js';
import type { RowAt, SheetMap } from './sheetMap.js';
import type { Splice } from './splice.js';
import { tagWith } from './tagWith.js';

export interface RowChange {
  readonly splices: readonly Splice[];
  /** Writes to cells that did not exist. */
  readonly inserted: readonly CellWrite[];
  readonly otherFormulas: boolean;
}

interface Sheet {
  readonly map: SheetMap;
  readonly context: SheetContext;
}

/** The cells of an existing row: changed in place, or inserted by their columns. */
export function rowChange(xml: string, row: RowAt, writes: ReadonlyMap<number, CellWrite>, sheet: Sheet): RowChange {
  const splices: Splice[] = [];
  const added: { at: number; write: CellWrite; xml: string }[] = [];
  let otherFormulas = false;
  for (const [column, write] of writes) {
    const cell = row.cells.get(column);
    if (cell) {
      const edit = cellEdit(xml, cell, write, sheet.context);
      otherFormulas ||= edit.otherFormula;
      const goes = edit.isBare && !carriesNext(row, column);
      splices.push({ from: cell.from, to: cell.to, text: goes ? '' : edit.xml });
      continue;
    }
    const text = newCell(write, { row, ...sheet });
    if (text !== '') added.push({ at: placeOf(row, column), write, xml: text });
    otherFormulas ||= typeof write.formula === 'string';
  }
  const inserted = added.map(({ write }) => write);
  return { splices: [...splices, ...insertions(xml, row, added)], inserted, otherFormulas };
}

/** A cell without an address follows the one before it, which must therefore stay. */
function carriesNext({ columns, unstated }: RowAt, column: number): boolean {
  return unstated.has(columns[columns.indexOf(column) + 1] ?? -1);
}

function placeOf({ columns, starts, cellsTo }: RowAt, column: number): number {
  return starts[columns.findIndex((other) => other > column)] ?? cellsTo;
}

function insertions(
  xml: string,
  row: RowAt,
  added: readonly { at: number; write: CellWrite; xml: string }[],
): Splice[] {
  if (added.length === 0) return [];
  const tag = xml.slice(row.from, row.tagTo);
  const start = tagWith(
    tag,
    spansWith(
      row,
      added.map(({ write }) => write.column),
    ),
  );
  if (tag.endsWith('/>')) {
    const cells = added.map((cell) => cell.xml).join('');
    return [{ from: row.from, to: row.tagTo, text: `${start.replace(/\s*\/>$/, '>')}${cells}</${row.name}>` }];
  }
  const splices = added.map((cell) => ({ from: cell.at, to: cell.at, text: cell.xml }));
  return start === tag ? splices : [{ from: row.from, to: row.tagTo, text: start }, ...splices];
}

/** Extends the first and last column that the row states to the new cells. */
function spansWith({ attributes }: RowAt, columns: readonly number[]): Record<string, string> {
  const [, first, last] = /^(\d+):(\d+)$/.exec(attributes['spans'] ?? '') ?? [];
  if (first === undefined || last === undefined) return {};
  const numbers = columns.map((column) => column + 1);
  return { spans: `${Math.min(Number(first), ...numbers)}:${Math.max(Number(last), ...numbers)}` };
}
