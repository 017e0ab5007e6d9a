import { shownNumber } from '../../units/shown.js';
import { isoFromSerial } from '../../../base/isoFromSerial.js';
import { daysText } from './daysText.js';
import type { ByFindingCode, FindingSentences } from './findingWords.js';
import { levelText } from './levelText.js';
import { rowsText } from './rowsText.js';

/** The hold: its breaks, the level between tests, its end, stretches without a test. */
export const holdFindings = {
  'hold-broken': ({ level, isBound, low, days, from, again, withinError, slip }) => ({
    finding:
      `Hold broken: ${isBound ? 'under ' : ''}${levelText(level)} is below ${levelText(low)}; ${daysText(days)} lost since ` +
      `${isoFromSerial(from)}, the count starts again${again === null ? ' at the next reading in the band' : ` at ${isoFromSerial(again)}`}` +
      `${withinError && !slip ? '; it is below by less than the meter’s error, but the reading counts' : ''}` +
      `${slip ? '; the row is also named as a slip: if it is one, correct or void it and the hold goes on' : ''}.`,
    why: 'The hold must be unbroken: any reading below the band sends it back to day one.',
  }),
  'level-below-between': ({ low, expected, high, fromRow, toRow }) => ({
    finding:
      `Between the tests in rows ${fromRow} and ${toRow} the level fell to about ${levelText(expected)}, with 95 % ` +
      `${high < low ? `below ${levelText(high)}` : `up to ${levelText(high)}`}, against a low limit of ${levelText(low)}: ` +
      `test after every change and before the dose that makes up for it.`,
    why: 'Doses, changes and loss by mass balance show what two tests in the band leave out.',
  }),
  'stopped-short': ({ days, wanted, said, level }) => ({
    finding:
      `Copper was taken out after ${daysText(days)} of ${shownNumber(wanted)}` +
      `${said ? '' : `, the level fell to ${levelText(level ?? 0)} and did not come back`}: the treatment is not complete.`,
    why: 'Copper stops reinfection while it is held: what hatches after a short hold starts the disease again.',
  }),
  'moved-early': ({ days, fewest, fish }) => ({
    finding: `Moved after ${daysText(days)} of the hold ("${cut(fish)}"): at least ${shownNumber(fewest)} unbroken days come first.`,
    why: 'A fish may go to a copper-free observation tank after 14 unbroken days at the earliest.',
  }),
  'moved-against-terms': ({ days, wanted, untested, signs }) => ({
    finding:
      `Moved after ${daysText(days)} of ${shownNumber(wanted)}, though ` +
      [
        ...(untested === null ? [] : [`a stretch of ${untested.toFixed(1)} h was untested`]),
        ...(signs === null ? [] : [`signs were seen ${daysText(signs)} before`]),
      ].join(' and ') +
      `: let them stay until day ${shownNumber(wanted)}.`,
    why: 'After 14 days only where none of them was untested for over 48 h and the last 7 were without signs.',
  }),
  'above-band': (finding) => ({
    finding: `${levelText(finding.level)} ${aboveText(finding)}.`,
    why: 'A level above the band does not break the hold, it endangers the fish: over a tenth, twice running or with signs is danger.',
  }),
  'untested-stretch': ({ hours, open }) => ({
    finding: open
      ? `No test for ${hours.toFixed(1)} h since this one: test now.`
      : `No test for ${hours.toFixed(1)} h before this one: test daily.`,
    why: 'An untested stretch is not a dip, but it is not proof either: 72 h are warned of.',
  }),
  'untested-noted': ({ rows, longest, openSince }) => ({
    finding: [
      rows.length === 0
        ? ''
        : `${rows.length === 1 ? 'A stretch' : `${rows.length} stretches`} of 36 to 72 h without a test before ${rowsText(rows)}`,
      openSince === null ? '' : `${rows.length === 0 ? 'No' : 'no'} test since row ${openSince}`,
      `the longest ${longest.toFixed(1)} h.`,
    ]
      .filter((words) => words !== '')
      .join(', ')
      .replace(/^(No test since row \d+), the longest/, '$1, for'),
    why: 'Test daily, twice a day while raising.',
  }),
  'restarted-untested': ({ hours, longestGap, days }) => ({
    finding:
      `No test for ${hours.toFixed(1)} h, longer than ${shownNumber(longestGap)} h: the hold starts anew here, ` +
      `${daysText(days)} lost.`,
    why: 'Beyond the longest gap nobody knows that the level held; a longest gap of "none" on the card switches this off.',
  }),
  newcomer: ({ fish, day, restart }) => ({
    finding:
      `"${cut(fish)}" came in on hold day ${day}: ` +
      (restart
        ? 'the card says that all start again, so day one for every fish is now.'
        : 'its own days begin now, the others count on as the card says.'),
    why: 'A new, untreated fish brings its own disease into the hold; whether all start again is the keeper’s choice.',
  }),
  'raised-too-fast': ({ hours, from, level }) => ({
    finding: `Raised from ${levelText(from)} to ${levelText(level)} within ${hours.toFixed(1)} h: watch the fish, and raise over several days next time.`,
    why: 'Several small doses a day over several days; only with white spot or velvet showing is the delay the greater risk.',
  }),
  'dose-too-large': ({ dose, rise, most, urgent }) => ({
    finding: `${millilitres(dose)} raise the level by ${levelText(rise)} at once, more than the ${millilitres(most)} of one step: split the dose.`,
    why: urgent
      ? 'One dose raises by at most half of the aim when urgent.'
      : 'One dose raises by at most a quarter of the aim.',
  }),
} satisfies Partial<FindingSentences>;

function aboveText({ top, over, reason }: ByFindingCode['above-band']): string {
  const by = `is ${over.toFixed(1)} % over the top of ${levelText(top)}`;
  switch (reason) {
    case 'once':
      return `${by}: add no copper, test again today`;
    case 'twice':
      return `${by}, twice running: lower it by a water change, never below the band`;
    case 'far':
      return `${by}: lower it by a water change now, never below the band`;
    case 'signs':
      return `${by} while fish show signs: test ammonia and oxygen too, and lower it by a water change`;
    case 'top unknown':
      return `or more is read, and the top is ${levelText(top)}: dilute the sample and test again`;
  }
}

function millilitres(amount: number): string {
  return `${shownNumber(Number(amount.toFixed(1)))} mL`;
}

function cut(text: string): string {
  const plain = text.replace(/\s+/g, ' ');
  return plain.length <= 40 ? plain : `${plain.slice(0, 39)}…`;
}
