import { pacePlan } from '../dose/pacePlan.js';
import * as limits from '../limits/limits.js';
import type { Card } from '../log/card.js';
import { meterErrorAt } from '../rules/meterError.js';
import type { SignRow, SignStep } from '../rules/signs/signSteps.js';
import { signsAfterArrival } from '../rules/signsAfterArrival.js';
import type { Treatment } from '../rules/treatment.js';
import { hoursPerDay, secondDays } from '../units/quantity.js';
import { believedLevel, type BelievedLevel } from './believedLevel.js';
import { lastTest, type LastTest } from './lastTest.js';
import type { Against } from './outcomes/outcome.js';
import { openFindings, type OpenFinding } from './openFindings.js';
import { paceNow, type PaceNow } from './pace.js';
import { standingOf, type Standing } from './stage.js';

/** The judgement of one treatment at one moment: what DONOW and SYSTEMS are views of. */
export interface State extends Standing {
  readonly treatment: Treatment;
  readonly card: Card;
  /** [serial day] */
  readonly now: number;
  readonly last: LastTest | null;
  /** Nothing is computed on it any more. */
  readonly isOld: boolean;
  readonly believed: BelievedLevel | null;
  readonly pace: PaceNow | null;
  /** The level to go to: the card's, lower from the first sign of intolerance until seven days after the recovery. [mg/L] */
  readonly aim: number;
  readonly open: readonly OpenFinding[];
  /** What the signs of the fish call for, and since when. */
  readonly signs: { readonly step: SignStep; readonly when: number };
  readonly isAgainst: (what: Against) => boolean;
}

/** Works the judgement out, once for all its views. */
export function stateOf(treatment: Treatment): State {
  const { card, now } = treatment;
  const last = lastTest(treatment);
  const standing = standingOf(treatment, last);
  const rows = signsAfterArrival(treatment);
  const open = standing.stage === 'ended' ? [] : openFindings(treatment, last);
  const sickSince = intolerantSince(rows, now);
  return {
    ...standing,
    ...{ treatment, card, now, last, open },
    isOld: last !== null && (now - last.when) * hoursPerDay > testLimitHours(standing, card) + 1 / 3600,
    believed: believedLevel(treatment),
    pace: last === null ? null : paceNow(treatment, last, sickSince ?? -Infinity),
    aim: sickSince === null ? card.aim : Math.min(card.aim, gentleAim(card)),
    signs: stepNow(rows),
    isAgainst: (what) => open.some(({ against }) => against.indexOf(what) >= 0),
  };
}

/** How old the last test may be. Common practice. [h] */
function testLimitHours({ stage }: Standing, card: Card): number {
  if (stage === 'holding' || stage === 'days done') return limits.testAgeHolding.value;
  return pacePlan(card.pace).roundTheClock ? limits.testAgeUrgent.value : limits.testAgeRaising.value;
}

/** The last text that was understood, with the first sign it answers to. */
function stepNow(rows: readonly SignRow[]): { step: SignStep; when: number } {
  const spoken = rows.filter(({ step }) => step !== 'unread' && step !== '');
  const last = spoken[spoken.length - 1];
  return { step: last?.step ?? '', when: last?.when ?? -Infinity };
}

/** From the first sign of the last episode; null: there is none, or its recovery is seven days old. */
function intolerantSince(rows: readonly SignRow[], now: number): number | null {
  let since: number | null = null;
  let well = -Infinity;
  for (const { reading, when } of rows) {
    if (reading === 'sign') [since, well] = [since ?? when, Infinity];
    else if (reading === 'clear' && well === Infinity) well = when;
  }
  return since !== null && now - well <= limits.intoleranceDays.value + secondDays ? since : null;
}

/** Low limit, meter's error and what is lost by the next test: as low as the hold can be kept. */
function gentleAim(card: Card): number {
  const { low } = card.band;
  return low + meterErrorAt(card, low) + low * limits.lossChelated.value;
}
