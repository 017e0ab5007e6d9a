import type { Limits, Place } from '../../result/problem.js';
import { shownNumber } from '../../units/shown.js';
import { listed, place, type Sentences } from './sentences.js';
import { whatToWrite } from './whatToWrite.js';

/** One value that cannot be used. */
export const valueSentences = {
  blank: ({ at, kind }) => `${where(at)} is blank; write ${whatToWrite[kind].write}`,
  'zero-level': ({ field }) => `${field} is 0 or empty; write "0 mg/L" if it was tested`,
  'blank-level': ({ field }) =>
    field === 'wanted'
      ? 'wanted is blank; write the level to reach, like 2.25 or "2.25 ppm"'
      : `${field} is blank; test first, then write the reading, like 2.05 or "2.05 ppm"`,
  'error-cell': ({ at, given }) => `${where(at)} holds the spreadsheet error ${given}; fix that cell${orEmpty(at)}`,
  'many-cells': ({ field, cells }) =>
    `${field} has ${cells} cells where one value is wanted; give one cell and fill the formula down`,
  'not-a-value': ({ at, given, kind }) =>
    `${place(at)} ${given} is not ${whatToWrite[kind].noun}; write ${whatToWrite[kind].write}`,
  'unknown-unit': ({ at, given, known }) => `${place(at)} ${given} has an unknown unit; write one of these: ${known}`,
  'three-digits-after-comma': ({ at, given }) =>
    `${place(at)} ${given} may be a decimal or thousands; write a decimal point, or leave the comma out`,
  'out-of-limits': ({ at, given, limits, unit }) =>
    `${place(at)} ${given} is outside its limits; write a value ${allowed(limits)}${unit === '' ? '' : ` ${unit}`}`,
  'not-whole': ({ field, given }) => `${field} ${given} is not a whole number; write one like 3`,
  'not-a-choice': ({ field, given, choices }) => `${field} ${given} is not known; write ${listed(choices)}`,
  'share-of-volume': ({ field, given }) => {
    const bare = given.replace(/"/g, '');
    const percent = shownNumber(Number(bare.replace(',', '.')) * 100);
    return `${field} ${given} may be litres or a share; write "${bare} L" or "${percent}%"`;
  },
  'share-without-volume': ({ field, given }) =>
    `${field} ${given} is a share of a volume that is not given; write the volume too, or the litres, like "50 L"`,
} satisfies Partial<Sentences>;

/** A cell of a range, or an argument, as the subject of a sentence. */
function where(at: Place): string {
  return 'row' in at ? `row ${at.row}` : at.field;
}

/** A row may be left empty; the argument refused may be a required one. */
function orEmpty(at: Place): string {
  return 'row' in at ? ', or leave it empty' : '';
}

/** The limits in words, as they follow "a value". */
function allowed({ above, min, below, max }: Limits): string {
  const top = max === undefined ? below : max;
  const topWord = max === undefined ? 'below' : 'at most';
  if (min !== undefined && max !== undefined) return `from ${shownNumber(min)} to ${shownNumber(max)}`;
  const bottom = min === undefined ? above : min;
  const bottomWords = bottom === undefined ? '' : `${min === undefined ? 'above' : 'at least'} ${shownNumber(bottom)}`;
  const topWords = top === undefined ? '' : `${topWord} ${shownNumber(top)}`;
  return [bottomWords, topWords].filter((words) => words !== '').join(' and ');
}
