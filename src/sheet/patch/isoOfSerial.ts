const millisecondsOfDay = 86_400_000;
/** 30 December 1899, from which days count so that those of our century come out as in a workbook. */
const origin = Date.UTC(1899, 11, 30);

/** The first day of year 1 and the last one of year 9999. */
const firstDay = -693_593;
const lastDay = 2_958_465;

/**
 * A serial day as XML writes it, `2026-03-01` or `2026-03-01T08:30:00`, to the millisecond where it has parts of a
 * second; undefined for a number that is no day of a calendar.
 */
export function isoOfSerial(serial: number): string | undefined {
  if (serial < firstDay || serial > lastDay) return undefined;
  const text = new Date(origin + Math.round(serial * millisecondsOfDay)).toISOString();
  const [day = '', time = ''] = text.slice(0, -1).split('T');
  if (Number.isInteger(serial)) return day;
  return `${day}T${time.replace('.000', '')}`;
}
