import { references } from '../../references/references.js';
import { shownNumber } from '../../units/shown.js';
import type { Sentences } from './sentences.js';

/** The hold, the ranges of formulas, and answers that cannot be shown. */
export const answerSentences = {
  'no-reading': () => 'copper has no reading yet, or none up to as of; test, then write the reading beside its time',
  'no-hold': ({ level, when, row, low, confirming }) =>
    `no hold is running: the last reading, ${level} on ${when} (row ${row}), ` +
    (confirming ? `needs a second one at or above ${shownNumber(low)}` : `is below ${shownNumber(low)}`),
  'outside-validity': ({ field, given, min, max, unit, source }) =>
    `${field} ${shownNumber(given)} is outside ${shownNumber(min)}–${shownNumber(max)}${unit === '' ? '' : ` ${unit}`}, ` +
    `the range of ${references[source].cite}; write a value inside it`,
  'answer-too-large': () => 'the answer is too large a number to show; check the units and write smaller values',
  'table-too-large': ({ rows }) => `the table of ${rows} rows is over 2 MB; give a shorter range`,
} satisfies Partial<Sentences>;

/** What a meter can show. */
export const meterSentences = {
  'meter-without-error': () =>
    'accuracy and percent are both 0, and no meter reads without error; write its ± in mg/L, like 0.05',
  'meter-too-coarse': ({ low, high, needed }) =>
    needed === null || high === null
      ? `this meter cannot show the low limit ${shownNumber(low)}: its percent grows as fast as the reading; ` +
        'test with a better meter'
      : `this meter cannot show this band: to show ${shownNumber(low)} it would have to read ` +
        `${shownNumber(Number(needed.toPrecision(4)))}, above the top ${shownNumber(high)}; test with a better meter`,
} satisfies Partial<Sentences>;
