import { addressRange, type BookTable, plainReferences } from '../../sheet/index.js';
import type { ICellData } from '@univerjs/core';
import type { OpenedSheet } from './openSheet.js';
import { setCells } from './setCells.js';
import { sheetId } from './gridKeys.js';
import type { ShownFile } from './shownFile.js';

/**
 * A named table grows by the rows that are written right below it, as in a spreadsheet program, and the formulas that
 * name it grow with it.
 */
export function growTables(sheet: OpenedSheet, shown: ShownFile): void {
  const before = shown.places.tables;
  const idOf = (name: string): string => sheetId(shown.opened.book.sheets.findIndex((each) => each.name === name));
  const tables = before.map((table) => grown(sheet, table, idOf(table.sheet)));
  if (tables.every(({ range }, i) => range === before[i]?.range)) return;
  shown.places = { ...shown.places, tables };
  renewFormulas(sheet, shown);
}

function grown({ api }: OpenedSheet, table: BookTable, id: string): BookTable {
  const worksheet = api.getActiveWorkbook()?.getSheetBySheetId(id);
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

function renewFormulas(sheet: OpenedSheet, shown: ShownFile): void {
  const workbook = sheet.api.getActiveWorkbook();
  const bySheet = new Map<string, Record<number, Record<number, ICellData>>>();
  for (const [key, formula] of shown.formulas) {
    if (formula.plain === null || formula.plain === formula.typed) continue;
    const [, id = '', row = '', column = ''] = /^(.*)!(\d+),(\d+)$/.exec(key) ?? [];
    const place = { row: Number(row), column: Number(column) };
    const worksheet = workbook?.getSheetBySheetId(id);
    // A cell that holds another formula by now keeps it.
    if (!worksheet || worksheet.getRange(place.row, place.column).getFormula() !== formula.plain) continue;
    const plain = `=${plainReferences(formula.typed.slice(1), { sheet: worksheet.getSheetName(), ...place, ...shown.places })}`;
    if (plain === formula.plain) continue;
    shown.formulas.set(key, { ...formula, plain });
    const cells = bySheet.get(id) ?? {};
    (cells[place.row] ??= {})[place.column] = { f: plain };
    bySheet.set(id, cells);
  }
  for (const [id, cells] of bySheet) setCells(sheet, id, cells);
}
