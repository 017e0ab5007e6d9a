/** One cell of the sheet component's workbook, for maps. */
export function cellKey(sheet: string, row: number, column: number): string {
  return `${sheet}!${row},${column}`;
}
