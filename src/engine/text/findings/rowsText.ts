const most = 8;

/** Rows by number; of many the first ones and how many more. */
export function rowsText(rows: readonly number[]): string {
  const shown = rows.slice(0, most);
  if (rows.length <= 1) return `row ${shown.join('')}`;
  if (rows.length > most) return `rows ${shown.join(', ')} and ${rows.length - most} more`;
  return `rows ${shown.slice(0, -1).join(', ')} and ${shown[shown.length - 1] ?? ''}`;
}
