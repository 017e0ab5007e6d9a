/** One cell of the sheet component's workbook, for maps. */
export function cellKey(sheet: string, row: number, column: number): string {
  return `${sheet}!${row},${column}`;
}

/** The id of the n-th sheet in the sheet component: not its name, which may be any word. */
export function sheetId(index: number): string {
  return `sheet-${index + 1}`;
}
