import { place, type Sentences } from './sentences.js';
import { whatToWrite } from './whatToWrite.js';

const fullTime = '"2026-03-01 08:00"';

/** Readings and their times. */
export const readingSentences = {
  'not-a-reading': ({ at, given }) =>
    `${place(at)} ${given} is not a reading; write ${whatToWrite.reading.write}, or leave it empty`,
  'reading-too-high': ({ at, given, bare }) =>
    bare
      ? `${place(at)} ${given} is more than 20 mg/L; if it is ug/L write "${given.replace(/"/g, '')} ug/L"`
      : `${place(at)} ${given} is more than 20 mg/L, the most a level may be; check its unit and write it again`,
  'reading-negative': ({ at, given }) =>
    `${place(at)} ${given} is negative; write a level from 0 to 20 mg/L${'row' in at ? ', or leave it empty' : ''}`,
  'bound-not-a-level': ({ field, given }) =>
    `${field} ${given} is a bound, not one level; write one level, like 2.05 or "2.05 ppm"`,
  'not-a-time': ({ at, given }) => `${place(at)} ${given} is not a time; write ${whatToWrite.time.write}`,
  'time-with-zone': ({ at, given }) =>
    `${place(at)} ${given} names a time zone; write the time of the wall clock alone, like ${fullTime}`,
  'time-without-date': ({ at, given }) =>
    `${place(at)} ${given} is a time without its date; write both, like ${fullTime}`,
  'not-a-time-of-day': ({ at, given }) =>
    `${place(at)} ${given} is not a time of day; write "08:00", "9:30 PM" or "0900", or leave it empty`,
  'two-times-of-day': ({ row, given }) =>
    `row ${row}: ${given} is a second time of day, the date already has one; write the time once`,
  'reading-without-time': ({ row, given }) =>
    `row ${row}: the reading ${given} has no time; write its date and time, like ${fullTime}`,
  'text-without-time': ({ row, given }) =>
    `row ${row}: the text ${given} has no time; write its date and time, like ${fullTime}`,
  'zero-or-untested': ({ row }) =>
    `row ${row} reads 0; if that is real write "0 mg/L", if it is an untested day write "none"`,
} satisfies Partial<Sentences>;

/** Ranges of cells, and bands. */
export const rangeSentences = {
  'not-a-line': ({ field, rows, columns }) =>
    `${field} has ${rows} rows and ${columns} columns; give one column or one row` +
    (field === 'when' ? ', or two columns, date and time of day' : ''),
  'unequal-ranges': ({ first, firstCells, second, secondCells }) =>
    `${first} has ${firstCells} cells, ${second} ${secondCells}; give ranges of the same rows`,
  'not-a-form': ({ field, given }) =>
    `${field} ${given} is not a form of copper; write "sulfate", "amine" or "chelated"` +
    (field === 'band' ? ', or the low limit as a number' : ''),
  'form-unclear': ({ field, given }) =>
    `${field} ${given} is unclear; write "sulfate" (free copper, 0.18–0.21) or "amine" (complexed, 0.45–0.55)`,
  'band-upside-down': ({ low, high }) => `band low ${low} is above its high ${high}; write the low limit first`,
  'band-cells': ({ rows, columns }) =>
    `band has ${rows} rows and ${columns} columns; give a form, one low limit, or two cells, low and high`,
} satisfies Partial<Sentences>;
