/** What a sheet is about, without the words for what is on it: "Past log" and "Past card" are both about "past". */
export function sheetStem(name: string): string {
  return name
    .toLowerCase()
    .replace(/\b(?:logs?|cards?|sheets?|tests?|readings?|data)\b/g, ' ')
    .replace(/[\s_-]+/g, ' ')
    .trim();
}
