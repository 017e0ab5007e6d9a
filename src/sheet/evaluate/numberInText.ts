const number = /^[+-]?(?:\d+|\d{1,3}(?:,\d{3})+)?(?:\.\d*)?(?:e[+-]?\d+)?(%?)$/i;
const day = /^(\d{4})[-/](\d{1,2})[-/](\d{1,2})(?:[T ]\s*(.+))?$/;
const clock = /^(\d{1,2}):(\d{2})(?::(\d{2}(?:\.\d+)?))?\s*(am|pm)?$/i;
const millisecondsADay = 86_400_000;
const serialOf1970 = 25_569;

/** The number that a text spells in a formula, such as `3`, `1,200`, `25%`, `2026-03-01 08:00`; undefined where it spells no number. */
export function numberInText(text: string): number | undefined {
  const trimmed = text.trim();
  const found = number.exec(trimmed);
  if (found !== null && /\d/.test(trimmed)) {
    const value = Number(trimmed.replace(/[,%]/g, ''));
    return Number.isNaN(value) ? undefined : found[1] === '%' ? value / 100 : value;
  }
  const date = day.exec(trimmed);
  if (date === null) return timeOfDay(trimmed);
  const [year, month, dayOfMonth] = [Number(date[1]), Number(date[2]), Number(date[3])];
  const at = new Date(Date.UTC(year, month - 1, dayOfMonth));
  if (at.getUTCMonth() !== month - 1 || at.getUTCDate() !== dayOfMonth || year < 1901) return undefined;
  const time = date[4] === undefined ? 0 : timeOfDay(date[4].trim());
  return time === undefined ? undefined : at.getTime() / millisecondsADay + serialOf1970 + time;
}

function timeOfDay(text: string): number | undefined {
  const found = clock.exec(text);
  if (found === null) return undefined;
  const half = found[4]?.toLowerCase();
  const hours = half === undefined ? Number(found[1]) : (Number(found[1]) % 12) + (half === 'pm' ? 12 : 0);
  const minutes = Number(found[2]);
  if (minutes > 59 || (half !== undefined && Number(found[1]) > 12)) return undefined;
  return (hours * 3600 + minutes * 60 + Number(found[3] ?? 0)) / 86_400;
}
