import { message } from '../message.js';
import { answerText } from './answerText.js';
import type { ByFindingCode, FindingSentences } from './findingWords.js';
import { levelText } from './levelText.js';
import { rowsText } from './rowsText.js';

/** What is written in the log and on the card: cells, readings, columns, the meter. */
export const recordFindings = {
  'unreadable-copper': ({ problem, counts }) => ({
    finding:
      `${capital(message(problem))}.` +
      (counts === null
        ? ''
        : ` Counted as in the band: ${answerText(counts.ifHeld)}; as below: ${answerText(counts.ifBelow)}.`),
    why:
      counts === null
        ? 'A cell that cannot be read is no test; the rest of the log is audited without it.'
        : 'Inside a hold a cell that cannot be read may have been a break, so both counts are given.',
  }),
  'unreadable-cell': ({ problem }) => ({
    finding: `${capital(message(problem))}.`,
    why: 'A cell that cannot be read is left out, and the rest of the row is read.',
  }),
  'row-without-time': ({ problem }) => ({
    finding: `${capital(message(problem))}.`,
    why: 'A row without a time has no place in the log and is left out.',
  }),
  'bare-zero': ({ ifZero, ifUntested }) => ({
    finding: `Reads 0: if that is real write "0 mg/L" (then ${answerText(ifZero)}), if nobody tested write "none" (then ${answerText(ifUntested)}).`,
    why: 'Some spreadsheets hand over an empty cell as 0, and in a hold the two mean opposite things.',
  }),
  'readings-on-limit': ({ limit, rows }) => ({
    finding: `Three readings in a row, ${rowsText(rows)}, are exactly ${levelText(limit)}, the low limit: read the meter again and write what it shows.`,
    why: 'A meter’s error scatters readings; three in a row on the limit are seldom what it showed.',
  }),
  'meter-cannot-show': (finding) => ({
    finding: meterText(finding),
    why: 'A reading shows the low limit only where it stays above it by more than the meter’s own error, with a chance of 95 %.',
  }),
  'strength-missing': () => ({
    finding:
      'Doses are logged, but the card has no strength: slips of the pen, doses written twice, absorbers, copper in the ' +
      'top-off and a level below the band between tests are not looked for; write it on the card, see QT.STRENGTH.',
    why: 'Without the strength of the solution nobody knows what a dose adds, and the level between tests cannot be followed.',
  }),
  'own-day-count': ({ written, counted, rows }) => ({
    finding:
      `The log says day ${written}; ${counted === null ? 'no hold runs' : `it is hold day ${counted}`}` +
      `${rows > 1 ? ` (${rows} rows from here)` : ''}.`,
    why: 'Hold day one is the first day in the band; raising days do not count, and a break goes back to day one.',
  }),
  'noted-readings': ({ kind, rows }) => ({
    finding: `${rows.length} ${notedText[kind][rows.length === 1 ? 0 : 1]}: ${rowsText(rows)}.`,
    why: notedText[kind][2],
  }),
} satisfies Partial<FindingSentences>;

/** One of them, several, and what becomes of them. */
const notedText: Readonly<Record<ByFindingCode['noted-readings']['kind'], readonly [string, string, string]>> = {
  approximate: [
    'approximate reading',
    'approximate readings',
    'An approximate reading counts as its number; write what the meter shows.',
  ],
  voided: [
    'reading is set aside as void',
    'readings are set aside as void',
    'A reading set aside is no test, and stays in the log to be seen.',
  ],
  'date only': [
    'reading has a date and no time of day',
    'readings have a date and no time of day',
    'A date alone is its midnight; the hours between tests are as good as the times written.',
  ],
};

function meterText({ reason, low, top, needed, from }: ByFindingCode['meter-cannot-show']): string {
  switch (reason) {
    case 'free-test':
      return 'The card says that the meter reads free copper: it reads complexed copper low, use a test for total copper.';
    case 'limit-unread':
      return `The meter reads from ${levelText(from ?? 0)}, above the low limit ${levelText(low)}: use a finer one.`;
    case 'too-coarse':
      return needed === null
        ? `This meter cannot show the low limit ${levelText(low)} within its range: use a finer one.`
        : `To show the low limit ${levelText(low)} this meter would have to read ${levelText(needed)}, above the top ${levelText(top)}: use a finer one.`;
  }
}

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}
