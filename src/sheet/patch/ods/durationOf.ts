/** Ten thousand years: longer spans are no times. */
const longest = 3_652_425;

/** A time of day or a span in days as XML writes it, such as `PT08H30M00S`; undefined for a number that is none. */
export function durationOf(days: number): string | undefined {
  if (Math.abs(days) > longest) return undefined;
  const milliseconds = Math.round(Math.abs(days) * 86_400_000);
  const whole = (size: number): number => Math.floor(milliseconds / size);
  const two = (number: number): string => String(number).padStart(2, '0');
  const rest = milliseconds % 1000 === 0 ? '' : `.${String(milliseconds % 1000).padStart(3, '0')}`;
  return `${days < 0 ? '-' : ''}PT${two(whole(3_600_000))}H${two(whole(60_000) % 60)}M${two(whole(1000) % 60)}${rest}S`;
}
