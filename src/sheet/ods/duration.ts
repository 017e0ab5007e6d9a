import { twoDigits } from '../../base/calendarDay.js';

const form = /^(-?)P(?:(\d+)D)?(?:T(?:(\d+)H)?(?:(\d+)M)?(?:(\d+(?:[.,]\d+)?)S)?)?$/;

/** A clock time or an elapsed time as XML writes it, such as `PT08H30M00S`, in days. */
export function daysOfDuration(text: string): number | undefined {
  const parts = form.exec(text.trim());
  if (parts === null) return undefined;
  const [days, hours, minutes, seconds] = parts.slice(2).map((part) => Number((part ?? '0').replace(',', '.')));
  const total = (days ?? 0) + ((hours ?? 0) * 3600 + (minutes ?? 0) * 60 + (seconds ?? 0)) / 86_400;
  return parts[1] === '-' ? -total : total;
}

/** Ten thousand years: a longer span is not a time. */
const longest = 3_652_425;

/** A time of day or a span in days as XML writes it, such as `PT08H30M00S`; undefined for a number that is none. */
export function durationOf(days: number): string | undefined {
  if (Math.abs(days) > longest) return undefined;
  const milliseconds = Math.round(Math.abs(days) * 86_400_000);
  const whole = (size: number): number => Math.floor(milliseconds / size);
  const rest = milliseconds % 1000 === 0 ? '' : `.${String(milliseconds % 1000).padStart(3, '0')}`;
  return `${days < 0 ? '-' : ''}PT${twoDigits(whole(3_600_000))}H${twoDigits(whole(60_000) % 60)}M${twoDigits(whole(1000) % 60)}${rest}S`;
}
