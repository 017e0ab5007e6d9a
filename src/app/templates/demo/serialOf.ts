/** The serial day of a time written `2026-03-01 08:00`, as a spreadsheet stores it. */
export function serialOf(text: string): number {
  if (!/^\d{4}-\d\d-\d\d \d\d:\d\d$/.test(text)) throw new Error(`not a time: ${text}`);
  return Date.parse(`${text.replace(' ', 'T')}:00Z`) / 86_400_000 + 25_569;
}
