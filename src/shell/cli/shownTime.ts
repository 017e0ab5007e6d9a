const msPerMinute = 60_000;
/** 1970-01-01 as a serial day. */
const epoch = 25_569;

/** A serial day as `2026-03-01 08:00`, in the wall clock that the sheet keeps. */
export function shownTime(serial: number): string {
  const minutes = Math.round((serial - epoch) * 1440);
  const text = new Date(minutes * msPerMinute).toISOString();
  return `${text.slice(0, 10)} ${text.slice(11, 16)}`;
}
