import type { SheetPlan } from '../plan/templatePlan.js';
import { answerSheet } from './answerSheet.js';

/** The gates before fish are let go, the verdict in the last row. */
export function readySheet(given: string): SheetPlan {
  return answerSheet({
    name: 'Ready',
    title: 'May the fish go?',
    lead: 'One formula, in A4. Every gate has to be met, and the verdict stands in the last row; an aquatic veterinarian and local law come before it.',
    id: 'READY',
    given,
    columns: {
      ...{ Gate: { width: 24 }, Met: { width: 10 }, Since: { width: 18 } },
      Why: { width: 78, look: 'spillText' },
    },
    room: 16,
    height: 30,
    tones: [
      {
        on: 'Met',
        rules: [
          { when: '{$Met}="yes"', tone: 'inside' },
          { when: '{$Met}="no"', tone: 'low' },
        ],
      },
      { rules: [{ when: 'AND({$Gate}<>"",{$Met}="")', tone: 'verdict' }] },
    ],
    orientation: 'landscape',
  });
}

/** Each fish or group with its own days. */
export function fishSheet(given: string): SheetPlan {
  return answerSheet({
    name: 'Fish',
    title: 'The fish: each has its own days',
    lead: 'One formula, in A4. A fish without an arrival in the log has no days; those of dead, moved and sold fish end there.',
    id: 'FISHDAYS',
    given,
    columns: {
      ...{ Fish: { width: 34 }, Arrived: { width: 20 }, 'Hold days': { width: 12 }, 'Ready on': { width: 20 } },
      Note: { width: 54, look: 'spillText' },
    },
    room: 80,
    height: 26,
    orientation: 'landscape',
  });
}

/** The deaths of each lot beside the published yardstick. */
export function deathsSheet(given: string): SheetPlan {
  return answerSheet({
    name: 'Deaths',
    title: 'Deaths by lot, beside the published yardstick',
    lead: 'One formula, in A4. Where the log names no lots, all fish are one.',
    id: 'DEATHS',
    given,
    columns: {
      Lot: { width: 70, look: 'spillText' },
      ...{ 'Came in': { width: 11 }, 'Dead on arrival': { width: 12 }, Raising: { width: 11 }, Hold: { width: 11 } },
      ...{ Observation: { width: 13 }, Left: { width: 11 }, '% after arrival': { width: 11 } },
    },
    room: 40,
    height: 37,
    headingHeight: 32,
    orientation: 'landscape',
  });
}
