/** 1970-01-01 as a serial day. */
const epoch = 25_569;
const msPerDay = 86_400_000;

/** This moment as a sheet on this machine would show it: the wall clock of its own zone. [serial day] */
export function wallClock(moment = new Date()): number {
  const zoned = moment.getTime() - moment.getTimezoneOffset() * 60_000;
  return Math.floor(zoned / 1000) / (msPerDay / 1000) + epoch;
}
