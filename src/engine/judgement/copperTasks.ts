import { isoFromSerial } from '../../base/isoFromSerial.js';
import * as limits from '../limits/limits.js';
import { eventKinds } from '../log/waterEvents.js';
import { levelText, rounded } from '../rules/phrases.js';
import { hoursPerDay, levelTolerance } from '../units/quantity.js';
import { forecast } from './forecast.js';
import { isIll } from './fishTasks.js';
import { syringeDown } from './measured.js';
import { nextTestAt } from './nextTest.js';
import type { State } from './state.js';
import { isComputable, isTestPending, levelNow } from './testedLevel.js';
import { plainTask, reason, urgencies, type Task } from './task.js';

const { copper, kills } = urgencies;

/** The dose that is due, or what stands in its place; none where the level need not be raised or cannot be computed. */
export function doseTasks(state: State): readonly Task[] {
  const { card, now, last, pace, stage } = state;
  if (last === null || pace === null || !['set-up', 'raising', 'holding', 'hold broken'].includes(stage)) return [];
  if (card.aim < card.band.low - levelTolerance || card.aim > card.band.high + levelTolerance) {
    const why = `aim ${rounded(card.aim, 3)} is outside the band of ${bandText(state)}: no dose until the card is right`;
    return [plainTask('check the card', kills, now, why)];
  }
  if (!isComputable(state) || isTestPending(state) || isIll(state) || state.isAgainst('dose')) return [];
  const level = levelNow(state);
  const rise = Math.min(targetNow(state, level) - level, mostNow(state, level));
  return rise > levelTolerance ? doseOf(state, level, rise) : [];
}

function bandText({ card: { band } }: State): string {
  return band.high === Infinity
    ? `${rounded(band.low, 3)} and more`
    : `${rounded(band.low, 3)} to ${rounded(band.high, 3)}`;
}

/** Where the level is to go: the aim below the band; in the hold only what the time to the next tests asks for. */
function targetNow(state: State, level: number): number {
  const { card, believed, now, aim, stage } = state;
  if (stage !== 'holding' || believed === null) return aim;
  const next = nextTestAt(state) ?? now;
  const isHeld = forecast(believed, card, next).low >= card.band.low - levelTolerance;
  if (isHeld) return level;
  const toAim = Math.max(0, aim - level);
  const second = now + 2 * (limits.soonestTest.value / hoursPerDay);
  if (forecast(believed, card, second, toAim).low >= card.band.low || aim < card.aim) return aim;
  // Even from the aim it would not last: as high as the band allows.
  const { expected, high } = forecast(believed, card, now);
  return Math.max(aim, Math.min(card.band.high, card.band.high - (high - expected)));
}

/** What the pace allows at once: back to a level that was held is free, but for a quarter of the aim. [mg/L] */
function mostNow({ pace, card }: State, level: number): number {
  if (pace === null) return 0;
  const free = Math.min(pace.held - level, limits.mostPerDose.value * card.aim);
  return Math.max(free, Math.min(pace.single, pace.left));
}

function doseOf(state: State, level: number, rise: number): readonly Task[] {
  const { card, now, pace } = state;
  const { strength, volume } = card;
  if (strength === null) {
    const why = `${levelText(rise)} are missing, but mL cannot be computed without the strength; see QT.STRENGTH`;
    return [{ ...plainTask('write the strength on the card', copper, now, why), unit: 'mg/mL' }];
  }
  const amount = syringeDown((rise * volume) / strength);
  if (amount <= 0) {
    const one = (limits.syringeStep.value * strength) / volume;
    if (one <= (pace?.single ?? 0) + levelTolerance) return [];
    const why = `${levelText(one)} is the least a syringe gives, more than one dose of ${levelText(rise)}; see QT.THIN`;
    return [plainTask('thin the solution', copper, now, why)];
  }
  const { at, isFirst } = lastDose(state);
  const by = Math.max(now, at + (pace?.hoursBetween ?? 0) / hoursPerDay);
  const to = level + (amount * strength) / volume;
  const why = reason(
    `${rounded(level, 3)} to ${rounded(to, 3)} mg/L`,
    isFirst ? 'wear gloves and goggles' : '',
    by > now ? `not before ${isoFromSerial(by).slice(11, 16)}` : '',
    to - level > limits.testAfterDose.value * card.aim
      ? `test ${limits.mixing.value} h after, before any other dose`
      : '',
    state.stage === 'holding' ? 'to keep the hold until the next tests' : 'one dose of the pace',
  );
  return [{ act: 'dose', urgency: copper, amount, unit: 'mL', by, why }];
}

function lastDose({ treatment: { events } }: State): { at: number; isFirst: boolean } {
  for (let index = events.count - 1; index >= 0; index--) {
    if (events.kind[index] === eventKinds.dose) return { at: events.when[index] ?? NaN, isFirst: false };
  }
  return { at: -Infinity, isFirst: true };
}
