const known = new Map<string, boolean>();

/** Whether a number format shows a day: it has a year, a month or a day. Clock times and elapsed hours show none. */
export function isDateFormat(format: string | undefined): boolean {
  if (format === undefined) return false;
  let answer = known.get(format);
  if (answer === undefined) {
    answer = showsDay(format);
    if (known.size < 1000) known.set(format, answer);
  }
  return answer;
}

function showsDay(format: string): boolean {
  if (/^general$/i.test(format)) return false;
  const letters = format
    .replace(/"[^"]*"?|\\.|_.|\*.|\[[^\]]*\]?/g, ' ')
    .replace(/AM\/PM|A\/P/gi, ' ')
    .toLowerCase();
  if (/[yd]/.test(letters)) return true;
  const clock = /[hs]/.test(letters) || /\[(h+|m+|s+)\]/i.test(format);
  return clock ? /mmm/.test(letters) : letters.includes('m');
}
