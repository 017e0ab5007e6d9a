/** The serial day of a time written `2026-03-01 08:00`, as a spreadsheet stores it. */
export function serialOf(text: string): number {
  const milliseconds = Date.parse(`${text.replace(' ', 'T')}:00Z`);
  if (Number.isNaN(milliseconds)) throw new Error(`not a time: ${text}`);
  return milliseconds / 86_400_000 + 25_569;
}
