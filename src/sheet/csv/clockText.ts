const clock = /^(\d{1,2})(?:([:.])(\d{2}))?(?::(\d{2}(?:[.,]\d{1,6})?))?\s*([ap])?\.?(m)?\.?$/i;

interface ClockTerms {
  /** After a date 08.30 is a time; alone it is a number. */
  readonly takesPoint: boolean;
}

/** A time of day such as 08:00, 9:30 PM or 9 pm as a fraction of a day; NaN: it is none. */
export function clockText(text: string, { takesPoint }: ClockTerms): number {
  const match = clock.exec(text);
  if (match === null) return NaN;
  const [, hours = '', mark, minutes, seconds = '0', half, m] = match;
  if ((half === undefined) !== (m === undefined)) return NaN;
  if (minutes === undefined && half === undefined) return NaN;
  if (mark === '.' && half === undefined && !takesPoint) return NaN;
  const hour = half === undefined ? Number(hours) : twelveHours(Number(hours), half.toLowerCase());
  const minute = Number(minutes ?? 0);
  const second = Number(seconds.replace(',', '.'));
  return hour < 24 && minute < 60 && second < 60 ? (hour * 3600 + minute * 60 + second) / 86400 : NaN;
}

function twelveHours(hour: number, half: string): number {
  return hour < 1 || hour > 12 ? NaN : (hour % 12) + (half === 'p' ? 12 : 0);
}
