import { isoFromSerial } from '../../engine/index.js';

interface TimeTick {
  readonly when: number;
  readonly label: string;
  /** Below the label where it changes: the year, or the day below times of day; '' elsewhere. */
  readonly under: string;
}

const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** Steps of the axis in days, and past them in months. */
const daySteps = [1 / 8, 1 / 4, 1 / 2, 1, 2, 4, 7, 14];
const monthSteps = [1, 2, 3, 6, 12, 24, 60, 120];

/** Moments of the time axis with dates as a wall calendar has them, whatever the machine's zone: at most `most`. */
export function timeTicks(from: number, to: number, most: number): TimeTick[] {
  const span = to - from;
  const step = daySteps.find((each) => span / each <= most);
  if (step === undefined) return named(monthStarts(from, to, most), (when) => monthOf(when), yearOf);
  // Weeks are counted from the first day shown.
  const origin = Math.ceil(from);
  const first = step >= 1 ? origin : Math.ceil(from / step) * step;
  const moments: number[] = [];
  for (let when = first; when <= to; when += step) moments.push(when);
  if (step >= 1) return named(moments, (when) => `${dayOf(when)} ${monthOf(when)}`, yearOf);
  return named(
    moments,
    (when) => isoFromSerial(when).slice(11),
    (when) => `${dayOf(when)} ${monthOf(when)} ${yearOf(when)}`,
  );
}

function monthStarts(from: number, to: number, most: number): number[] {
  const starts: number[] = [];
  for (let day = Math.ceil(from); day <= to; day++) if (dayOf(day) === 1) starts.push(day);
  const step = monthSteps.find((each) => starts.length / each <= most) ?? 240;
  return starts.filter((day) => monthCount(day) % step === 0);
}

function named(
  moments: readonly number[],
  label: (when: number) => string,
  under: (when: number) => string,
): TimeTick[] {
  return moments.map((when, index) => {
    const before = moments[index - 1];
    const isNew = before === undefined || under(before) !== under(when);
    return { when, label: label(when), under: isNew ? under(when) : '' };
  });
}

function yearOf(when: number): string {
  return isoFromSerial(when).slice(0, 4);
}

function monthCount(when: number): number {
  return Number(yearOf(when)) * 12 + Number(isoFromSerial(when).slice(5, 7)) - 1;
}

function monthOf(when: number): string {
  return months[Number(isoFromSerial(when).slice(5, 7)) - 1] ?? '';
}

function dayOf(when: number): number {
  return Number(isoFromSerial(when).slice(8, 10));
}
