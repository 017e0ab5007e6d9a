/** Columns of a log as the host hands them over: an array for each row. */
export type Column = (number | string | null)[][];

const firstDay = 30000;

/** Readings every hour. */
export const hourly = (rows: number): Column => rowsOf(rows, (i) => [firstDay + i / 24]);

/** Readings that make short numbers, so that a table of many rows stays below what a host delivers. */
export const everySixHours = (rows: number): Column => rowsOf(rows, (i) => [firstDay + i / 4]);

/** Every hour, the date in one column and the time of day in another. */
export const dateAndTime = (rows: number): Column =>
  rowsOf(rows, (i) => [firstDay + Math.floor(i / 24), (i % 24) / 24]);

/** Levels in the band of chelated copper, as a meter shows them: two decimals. */
const level = (i: number): number => (205 + (i % 37)) / 100;
const written = (i: number): string =>
  i % 20 === 13 ? `~${level(i)}` : ([`${level(i)} ppm`, `${level(i)}`, `${level(i)} mg/L`][i % 3] ?? '');

export const levels = (rows: number): Column => rowsOf(rows, (i) => [level(i)]);
export const textLevels = (rows: number): Column => rowsOf(rows, (i) => [written(i)]);
export const someText = (rows: number): Column => rowsOf(rows, (i) => [i % 20 === 7 ? written(i) : level(i)]);
export const someBlank = (rows: number): Column =>
  rowsOf(rows, (i) => [i % 25 === 7 || i % 25 === 15 ? null : level(i)]);

/** Two columns whose rows stand in one and the same order that is no order; the same in every run. */
export function shuffledPair(first: Column, second: Column): [Column, Column] {
  const order = first.map((_, i) => i);
  let state = 12345;
  for (let i = order.length - 1; i > 0; i--) {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    const j = state % (i + 1);
    [order[i], order[j]] = [order[j] ?? 0, order[i] ?? 0];
  }
  const inOrder = (column: Column): Column => order.map((from) => column[from] ?? []);
  return [inOrder(first), inOrder(second)];
}

function rowsOf(rows: number, row: (i: number) => (number | string | null)[]): Column {
  return Array.from({ length: rows }, (_, i) => row(i));
}
