import { daysText, isoFromSerial, levelNumber, levelText } from '../../engine/index.js';
import type { PlotData, PlotReading } from './plotParts.js';

/** This many breaks are listed one by one. */
const mostBreaks = 3;

/** The plot in two to five sentences, for people who cannot see it. */
export function plotWords(data: PlotData): string {
  return [readingWords(data), ...holdWords(data), ...actionWords(data)].join(' ');
}

function readingWords({ readings, from, to, band }: PlotData): string {
  const bandWords =
    band.high === null ? `from ${levelText(band.low)} up` : `of ${levelNumber(band.low)} to ${levelText(band.high)}`;
  const [first] = readings;
  if (first === undefined) return `No reading was logged; the therapeutic band is ${bandWords.replace(/^of /, '')}.`;
  let [lowest, highest] = [first, first];
  for (const reading of readings) {
    if (reading.low < lowest.low) lowest = reading;
    if ((reading.high ?? Infinity) > (highest.high ?? Infinity)) highest = reading;
  }
  const span = `From ${dayOf(from)} to ${dayOf(to)}`;
  const told = (reading: PlotReading): string => `${reading.text} mg/L on ${isoFromSerial(reading.when)}`;
  const counts = `${counted(of(readings, 'below'), 'below')}, ${counted(of(readings, 'in band'), 'in')} and ${counted(of(readings, 'above'), 'above')} the band ${bandWords}`;
  if (readings.length === 1)
    return `${span} there is one reading, ${told(first)}, ${placeWords(first)} the band ${bandWords}.`;
  return `${span} there are ${readings.length} readings, the lowest ${told(lowest)}, the highest ${told(highest)}: ${counts}.`;
}

function of(readings: readonly PlotReading[], status: PlotReading['status']): number {
  return readings.filter((reading) => reading.status === status).length;
}

function counted(count: number, place: string): string {
  return `${count} ${place}`;
}

function placeWords({ status }: PlotReading): string {
  return status === 'in band' ? 'in' : status;
}

function holdWords({ holds, breaks, untested, wantedDays }: PlotData): string[] {
  const wanted = daysText(wantedDays).replace('.0', '');
  const longest = holds.reduce((most, { days }) => Math.max(most, days), 0);
  const enough = holds.filter(({ standing }) => standing === 'enough').length;
  const running = holds.find(({ standing }) => standing === 'running');
  const which = enough > 0 ? `${enough} lasted` : 'none lasted';
  const run = running === undefined ? '' : `, and one has been running since ${isoFromSerial(running.from)}`;
  const count = holds.length === 1 ? 'There is one hold, of' : `There are ${holds.length} holds, the longest of`;
  const first =
    holds.length === 0
      ? `No hold began; ${wanted} are wanted.`
      : `${count} ${daysText(longest)}; ${which} the ${wanted} wanted${run}.`;
  const told = breaks
    .slice(0, mostBreaks)
    .map(
      ({ when, why }) => `${isoFromSerial(when)} (${why === 'below' ? 'a reading below' : 'not tested for too long'})`,
    );
  const more = breaks.length > mostBreaks ? ` and ${breaks.length - mostBreaks} more` : '';
  const hours = untested.reduce((most, span) => Math.max(most, span.hours), 0);
  const gaps =
    untested.length === 0
      ? ''
      : `${untested.length} ${untested.length === 1 ? 'stretch' : 'stretches'} of a hold went without a test for over 36 h, the longest ${hours.toFixed(0)} h`;
  const broken =
    breaks.length === 0
      ? 'No break'
      : `${breaks.length === 1 ? 'A break' : `${breaks.length} breaks`} on ${told.join(', ')}${more}`;
  return [first, holds.length === 0 ? '' : `${broken}${gaps === '' ? '' : `; ${gaps}`}.`].filter(
    (words) => words !== '',
  );
}

function actionWords({ doses, changes, fish, unread }: PlotData): string[] {
  const died = fish.filter(({ kind }) => kind === 'died').reduce((sum, { count }) => sum + (count ?? 1), 0);
  const parts = [
    several(doses.length, 'dose of copper', 'doses of copper'),
    several(changes.length, 'water change', 'water changes'),
    died === 0 ? '' : `at least ${died} fish died`,
    unread.length === 0 ? '' : `${several(unread.length, 'copper cell', 'copper cells')} could not be read`,
  ].filter((words) => words !== '');
  return parts.length === 0 ? [] : [`Logged: ${parts.join(', ')}.`];
}

function several(count: number, one: string, many: string): string {
  return count === 0 ? '' : `${count} ${count === 1 ? one : many}`;
}

function dayOf(when: number): string {
  return isoFromSerial(when).slice(0, 10);
}
