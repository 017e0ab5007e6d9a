import { isoFromSerial } from '../../base/isoFromSerial.js';
import * as limits from '../limits/limits.js';
import { shownNumber } from '../units/shown.js';
import type { HoldAnswer } from './holdAnswer.js';
import { answerText, daysText, rowsText } from './phrases.js';
import type { FindingWords } from './rule.js';

/** The answer to the question whether the hold was long enough. Days in days, levels in mg/L, times in hours. */
export type Verdict =
  | {
      readonly code: 'verdict';
      readonly answer: HoldAnswer;
      readonly wanted: number;
      /** Whether the log has a reading at all. */
      readonly tested: boolean;
      /** What leaves the answer open: the lowest row, and the answer with every such cell counted either way. */
      readonly open: { readonly row: number; readonly ifBelow: HoldAnswer; readonly ifHeld: HoldAnswer } | null;
    }
  | {
      readonly code: 'verdict-days';
      readonly kind: HoldAnswer['kind'];
      readonly days: number;
      /** Of the longest hold. */
      readonly longest: number;
      readonly wanted: number;
      /** Of the hold that was long enough, else of the running one, else of the longest; null: there is none. [serial day] */
      readonly from: number | null;
      readonly to: number | null;
      /** The days go so far past the last test. */
      readonly credited: number;
    }
  | { readonly code: 'verdict-breaks'; readonly rows: readonly number[]; readonly lost: number }
  | {
      readonly code: 'verdict-untested';
      readonly stretches: number;
      readonly longest: number;
      readonly restarts: number;
      readonly lost: number;
    };

type Of<C extends Verdict['code']> = Extract<Verdict, { readonly code: C }>;

/** Whether the hold was long enough, and what it is made of, in words. */
export function verdictWords(finding: Verdict): FindingWords {
  switch (finding.code) {
    case 'verdict':
      return {
        finding: answered(finding),
        why:
          finding.open === null
            ? `A hold counts from a reading in the band until a reading below, or a stretch without a test longer than the longest gap; ${shownNumber(finding.wanted)} days are wanted.`
            : 'A copper cell inside a hold that says nothing certain could have been a break, and the answer hangs on it.',
      };
    case 'verdict-days':
      return {
        finding: daysHeld(finding),
        why: 'Days have 24 hours and run from the first reading in the band (or the arrival) to the last reading not below.',
      };
    case 'verdict-breaks': {
      const { rows, lost } = finding;
      return {
        finding:
          rows.length === 0
            ? 'No breaks.'
            : `${rows.length} ${rows.length === 1 ? 'break' : 'breaks'} (${rowsText(rows)}), ${daysText(lost)} lost.`,
        why: 'Any reading below the band breaks the hold, and its days are lost.',
      };
    }
    case 'verdict-untested':
      return { finding: untested(finding), why: 'A stretch without a test is not a dip, but it is not proof either.' };
  }
}

function answered({ answer, wanted, tested, open }: Of<'verdict'>): string {
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

function daysHeld({ kind, days, longest, from, to, credited }: Of<'verdict-days'>): string {
  if (from === null || to === null) return 'Days held: 0.0, no reading began a hold.';
  const span = `from ${isoFromSerial(from)} to ${isoFromSerial(to)}`;
  if (kind === 'not complete') return `Days held: 0.0 now; the longest hold was ${daysText(longest)}, ${span}.`;
  const past = credited > 0 ? `, ${credited.toFixed(1)} h of them past the last test` : '';
  return `Days held: ${daysText(days)}, ${span}${past}.`;
}

function untested({ stretches, longest, restarts, lost }: Of<'verdict-untested'>): string {
  if (stretches === 0) return `No untested stretch of over ${limits.notedGap.value} h.`;
  const again = restarts === 0 ? '' : `; the hold started again after ${restarts} of them, ${daysText(lost)} lost`;
  return `${stretches} untested ${stretches === 1 ? 'stretch' : 'stretches'} of over ${limits.notedGap.value} h, the longest ${longest.toFixed(1)} h${again}.`;
}
