import * as limits from '../limits/limits.js';
import { rounded } from '../rules/phrases.js';
import { hoursPerDay, levelTolerance } from '../units/quantity.js';
import { isoFromSerial } from '../../base/isoFromSerial.js';
import { isComputable, isTestPending } from './testedLevel.js';
import { forecast } from './forecast.js';
import type { State } from './state.js';
import { plainTask, reason, urgencies, type Task } from './task.js';

const hours = (count: number): number => count / hoursPerDay;

/** The next copper test, unless a doubt asks for one already. */
export function testTasks(state: State): readonly Task[] {
  const { last, now, stage, believed } = state;
  if (stage === 'ended' || (believed?.doubt ?? null) !== null) return [];
  if (last === null) return [testBy(now, now, '0 readings so far: nothing can be dosed on an untested level')];
  const level = rounded(last.low, 3);
  if (last.changedAt !== null && !(last.changedAt < (last.dosedAt ?? -Infinity))) {
    return [
      testBy(
        last.changedAt + hours(limits.mixing.value),
        now,
        `${level} was read before water was changed: test again`,
      ),
    ];
  }
  if (last.dosedAt !== null && isTestPending(state)) {
    const why = `${level} was read before the last dose: let it mix ${limits.mixing.value} h, then test`;
    return [testBy(last.dosedAt + hours(limits.mixing.value), now, why)];
  }
  const due = nextTestAt(state) ?? now;
  if (state.isOld) {
    const age = rounded((now - last.when) * hoursPerDay, 1);
    return [testBy(Math.min(now, due), now, `${age} h since the last test: nothing is computed on it`)];
  }
  if (!isComputable(state)) return [testBy(now, now, `${level} or more: use a test that shows the level itself`)];
  return [testBy(due, now, `${level} mg/L at the last test; the next one is due then`)];
}

function testBy(by: number, now: number, why: string): Task {
  const isLate = by < now - 1 / hoursPerDay;
  return plainTask(
    'test copper',
    urgencies.test,
    by,
    reason(why, isLate ? `overdue since ${isoFromSerial(by).slice(0, 16)}` : ''),
  );
}

/** When the next test is due after the last; null: there is none. [serial day] */
export function nextTestAt(state: State): number | null {
  const { last, stage, pace, believed, card, outSince, now } = state;
  if (last === null) return null;
  switch (stage) {
    case 'ended':
      return null;
    case 'observing':
    case 'clearing':
      return (
        last.when +
        hours(
          now - (outSince ?? now) > hours(limits.firstTestOut.value)
            ? limits.secondTestOut.value
            : limits.firstTestOut.value,
        )
      );
    case 'days done':
      return byDay(last.when + hours(limits.usualTest.value), last.when);
    case 'set-up':
    case 'raising':
    case 'hold broken':
      return pace?.urgent === true
        ? last.when + hours(limits.urgentDoseGap.value)
        : byDay(last.when + hours(limits.soonestTest.value), last.when);
    case 'holding': {
      if (pace?.urgent === true && last.low < card.band.low) return last.when + hours(limits.urgentDoseGap.value);
      let due = last.when + hours(limits.usualTest.value);
      const soonest = last.when + hours(limits.soonestTest.value);
      while (due > soonest && believed !== null && forecast(believed, card, due).low < card.band.low - levelTolerance)
        due -= hours(1);
      return byDay(Math.max(due, soonest), last.when);
    }
  }
}

/** Moved earlier to an hour at which people are awake, unless that is before the last test. */
function byDay(due: number, last: number): number {
  const midnight = Math.floor(due);
  const hour = (due - midnight) * hoursPerDay;
  const [begins, ends] = [limits.dayBegins.value, limits.dayEnds.value];
  if (hour >= begins - 1e-6 && hour <= ends + 1e-6) return due;
  const evening = (hour > ends ? midnight : midnight - 1) + hours(ends);
  return evening > last + hours(1) ? evening : due;
}
