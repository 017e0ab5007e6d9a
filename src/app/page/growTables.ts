import { addressRange, type Book, type BookTable, plainReferences } from '../../sheet/index.js';
import type { ICellData } from '@univerjs/core';
import type { OpenedSheet } from './openSheet.js';
import { setCells } from './setCells.js';
import type { ShownFile } from './shownFile.js';

/**
 * A named table takes in the rows that are written right below it, as in a spreadsheet program, and the formulas that name
 * it reach as far.
 */
export function growTables(sheet: OpenedSheet, shown: ShownFile): void {
  const book = shown.opened.book;
  const tables = shown.tables.map((table) => grown(sheet, table));
  if (tables.every(({ range }, i) => range === shown.tables[i]?.range)) return;
  shown.tables = tables;
  renewFormulas(sheet, shown, book);
}

function grown({ api }: OpenedSheet, table: BookTable): BookTable {
  const worksheet = api.getActiveWorkbook()?.getSheetByName(table.sheet);
  if (!worksheet || table.totals) return table;
  let { range } = table;
  const isFilled = (row: number): boolean =>
    row < worksheet.getMaxRows() &&
    worksheet
      .getRange(addressRange({ ...range, firstRow: row, lastRow: row }))
      .getValues()[0]
      ?.some((value) => value !== null && value !== undefined && value !== '') === true;
  while (isFilled(range.lastRow + 1)) range = { ...range, lastRow: range.lastRow + 1 };
  return range === table.range ? table : { ...table, range };
}

function renewFormulas(sheet: OpenedSheet, shown: ShownFile, { names }: Book): void {
  const workbook = sheet.api.getActiveWorkbook();
  const bySheet = new Map<string, Record<number, Record<number, ICellData>>>();
  for (const [key, formula] of shown.formulas) {
    if (formula.plain === null || formula.plain === formula.typed) continue;
    const [, id = '', row = '', column = ''] = /^(.*)!(\d+),(\d+)$/.exec(key) ?? [];
    const place = { row: Number(row), column: Number(column) };
    const worksheet = workbook?.getSheetBySheetId(id);
    // A cell that holds another formula by now has its own.
    if (!worksheet || worksheet.getRange(place.row, place.column).getFormula() !== formula.plain) continue;
    const { tables } = shown;
    const plain = `=${plainReferences(formula.typed.slice(1), { sheet: worksheet.getSheetName(), ...place, tables, names })}`;
    if (plain === formula.plain) continue;
    shown.formulas.set(key, { ...formula, plain });
    const cells = bySheet.get(id) ?? {};
    (cells[place.row] ??= {})[place.column] = { f: plain };
    bySheet.set(id, cells);
  }
  for (const [id, cells] of bySheet) setCells(sheet, id, cells);
}
