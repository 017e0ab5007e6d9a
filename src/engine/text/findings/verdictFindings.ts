import { isoFromSerial } from '../../../base/isoFromSerial.js';
import { shownNumber } from '../../units/shown.js';
import { answerText } from './answerText.js';
import { daysText } from './daysText.js';
import type { ByFindingCode, FindingSentences } from './findingWords.js';
import { rowsText } from './rowsText.js';

/** Whether the hold was long enough, and what it is made of. */
export const verdictFindings = {
  verdict: (finding) => ({
    finding: verdictText(finding),
    why:
      finding.open === null
        ? `A hold counts from a reading in the band until a reading below, or a stretch without a test longer than the longest gap; ${shownNumber(finding.wanted)} days are wanted.`
        : 'A copper cell inside a hold that says nothing certain could have been a break, and the answer hangs on it.',
  }),
  'verdict-days': (finding) => ({
    finding: daysHeld(finding),
    why: 'Days have 24 hours and run from the first reading in the band (or the arrival) to the last reading not below.',
  }),
  'verdict-breaks': ({ rows, lost }) => ({
    finding:
      rows.length === 0
        ? 'No breaks.'
        : `${rows.length} ${rows.length === 1 ? 'break' : 'breaks'} (${rowsText(rows)}), ${daysText(lost)} lost.`,
    why: 'Any reading below the band breaks the hold, and its days are lost.',
  }),
  'verdict-untested': (finding) => ({
    finding: untested(finding),
    why: 'A stretch without a test is not a dip, but it is not proof either.',
  }),
} satisfies Partial<FindingSentences>;

function verdictText({ answer, wanted, tested, open }: ByFindingCode['verdict']): string {
  if (open !== null) {
    return (
      `open because of row ${open.row}: ${answerText(open.ifHeld)} if every such cell was in the band (a bare 0: no test), ` +
      `${answerText(open.ifBelow)} if below.`
    );
  }
  const of = `${daysText(answer.days)} of ${shownNumber(wanted)}`;
  switch (answer.kind) {
    case 'complete':
      return `complete: ${of} unbroken; what comes next is in QT.READY, and a veterinarian decides.`;
    case 'running':
      return answer.days >= wanted
        ? `running: ${of}, of which the last are past the last test: a test in the band completes it.`
        : `running: ${of} unbroken so far.`;
    case 'not complete':
      return tested
        ? 'not complete: no hold is running, and none was long enough.'
        : 'not complete: there is no reading.';
  }
}

function daysHeld({ kind, days, longest, from, to, credited }: ByFindingCode['verdict-days']): string {
  if (from === null || to === null) return 'Days held: 0.0, no reading began a hold.';
  const span = `from ${isoFromSerial(from)} to ${isoFromSerial(to)}`;
  if (kind === 'not complete') return `Days held: 0.0 now; the longest hold was ${daysText(longest)}, ${span}.`;
  const past = credited > 0 ? `, ${credited.toFixed(1)} h of them past the last test` : '';
  return `Days held: ${daysText(days)}, ${span}${past}.`;
}

function untested({ stretches, longest, restarts, lost }: ByFindingCode['verdict-untested']): string {
  if (stretches === 0) return 'No untested stretch of over 36 h.';
  const anew = restarts === 0 ? '' : `; the hold started anew after ${restarts} of them, ${daysText(lost)} lost`;
  return `${stretches} untested ${stretches === 1 ? 'stretch' : 'stretches'} of over 36 h, the longest ${longest.toFixed(1)} h${anew}.`;
}
