import type { PlotData } from './plotParts.js';
import { textWidth } from './textWidth.js';

/** What a sample in the key shows. */
export type Sample =
  | 'in band'
  | 'below'
  | 'above'
  | 'open'
  | 'bound'
  | 'course'
  | 'zone'
  | 'enough'
  | 'running'
  | 'too short'
  | 'break below'
  | 'break untested'
  | 'dose'
  | 'change'
  | 'in'
  | 'out'
  | 'died'
  | 'unread';

export interface KeyItem {
  readonly sample: Sample;
  readonly text: string;
  readonly left: number;
  /** 0 is the first line. */
  readonly line: number;
}

export const keyLineHeight = 17;
export const keySize = 11;
/** Room of a sample, and space after an item. [px] */
export const sampleWidth = 24;
const space = 14;

/** The key in words, line by line: only what occurs in this plot. */
export function plotKey(data: PlotData, width: number): KeyItem[] {
  let left = 4;
  let line = 0;
  return wordsOf(data).map(([sample, text]) => {
    const room = sampleWidth + textWidth(text, keySize);
    if (left > 4 && left + room > width - 4) {
      left = 4;
      line++;
    }
    const item = { sample, text, left, line };
    left += room + space;
    return item;
  });
}

function wordsOf({ readings, course, holds, breaks, doses, changes, fish, unread }: PlotData): [Sample, string][] {
  const has = (status: string): boolean => readings.some((reading) => reading.status === status);
  const wanted: readonly (readonly [boolean, Sample, string])[] = [
    [has('in band'), 'in band', 'reading in the band'],
    [has('below'), 'below', 'reading below'],
    [has('above'), 'above', 'reading above'],
    [
      readings.some(({ approximate, bound }) => approximate || bound === 'range'),
      'open',
      'open: approximate, or a range',
    ],
    [readings.some(({ bound }) => bound === 'under' || bound === 'over'), 'bound', 'bound, written < or >'],
    [course.length > 1, 'course', 'level by mass balance, 95 % band'],
    [true, 'zone', 'therapeutic band'],
    [holds.some(({ standing }) => standing === 'enough'), 'enough', 'hold long enough'],
    [holds.some(({ standing }) => standing === 'running'), 'running', 'hold running'],
    [holds.some(({ standing }) => standing === 'too short'), 'too short', 'hold too short'],
    [breaks.some(({ why }) => why === 'below'), 'break below', 'break: reading below'],
    [breaks.some(({ why }) => why === 'untested'), 'break untested', 'break: not tested'],
    [doses.length > 0, 'dose', 'dose of copper'],
    [changes.length > 0, 'change', 'water change'],
    [fish.some(({ kind }) => kind === 'in'), 'in', 'fish in'],
    [fish.some(({ kind }) => kind === 'out'), 'out', 'fish out'],
    [fish.some(({ kind }) => kind === 'died'), 'died', 'fish died'],
    [unread.length > 0, 'unread', 'copper cell not read'],
  ];
  return wanted.flatMap(([occurs, sample, text]): [Sample, string][] => (occurs ? [[sample, text]] : []));
}
