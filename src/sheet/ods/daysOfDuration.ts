const form = /^(-?)P(?:(\d+)D)?(?:T(?:(\d+)H)?(?:(\d+)M)?(?:(\d+(?:[.,]\d+)?)S)?)?$/;

/** A clock time or an elapsed time as XML writes it, such as `PT08H30M00S`, in days. */
export function daysOfDuration(text: string): number | undefined {
  const parts = form.exec(text.trim());
  if (parts === null) return undefined;
  const [days, hours, minutes, seconds] = parts.slice(2).map((part) => Number((part ?? '0').replace(',', '.')));
  const total = (days ?? 0) + ((hours ?? 0) * 3600 + (minutes ?? 0) * 60 + (seconds ?? 0)) / 86_400;
  return parts[1] === '-' ? -total : total;
}
