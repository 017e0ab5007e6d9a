/** Columns of a log as the host hands them over: an array for each row. */
export type Column = (number | string | null)[][];

export const firstDay = 30000;

/** Readings every hour. */
export const hourly = (rows: number): Column => rowsOf(rows, (i) => [firstDay + i / 24]);

/** The same, the date in one column and the time of day in another. */
export const dateAndTime = (rows: number): Column =>
  rowsOf(rows, (i) => [firstDay + Math.floor(i / 24), (i % 24) / 24]);

/** Levels in the band of chelated copper, as a meter shows them. */
const level = (i: number): number => 2.05 + (i % 37) / 100;
const written = (i: number): string =>
  [`${level(i)} ppm`, `${level(i)}`, `~${level(i)}`, `${level(i)} mg/L`][i % 4] ?? '';

export const levels = (rows: number): Column => rowsOf(rows, (i) => [level(i)]);
export const textLevels = (rows: number): Column => rowsOf(rows, (i) => [written(i)]);
export const someText = (rows: number): Column => rowsOf(rows, (i) => [i % 20 === 7 ? written(i) : level(i)]);
export const someBlank = (rows: number): Column =>
  rowsOf(rows, (i) => [i % 25 === 7 || i % 25 === 15 ? null : level(i)]);

/** The rows of several columns in one and the same order that is no order; the same in every run. */
export function shuffled(columns: readonly Column[]): Column[] {
  const rows = columns[0]?.length ?? 0;
  const order = Array.from({ length: rows }, (_, i) => i);
  let state = 12345;
  for (let i = rows - 1; i > 0; i--) {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    const j = state % (i + 1);
    [order[i], order[j]] = [order[j] ?? 0, order[i] ?? 0];
  }
  return columns.map((column) => order.map((from) => column[from] ?? []));
}

function rowsOf(rows: number, row: (i: number) => (number | string | null)[]): Column {
  return Array.from({ length: rows }, (_, i) => row(i));
}
