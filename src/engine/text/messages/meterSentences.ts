import { shownNumber } from '../../units/shown.js';
import type { Sentences } from './sentences.js';

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
