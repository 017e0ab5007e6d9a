import { openHold } from '../rules/openHold.js';
import { cut, rounded } from '../rules/phrases.js';
import * as limits from '../limits/limits.js';
import { levelTolerance } from '../units/quantity.js';
import { isComputable } from './testedLevel.js';
import type { State } from './state.js';
import { plainTask, reason, urgencies, type Task } from './task.js';

const { days } = urgencies;

/** The days that are left, or what comes after them. */
export function dayTasks(state: State): readonly Task[] {
  const { stage, slowest, card, now } = state;
  const who = slowest.fish === '' ? '' : ` of ${cut(slowest.fish, 30)}`;
  const held = rounded(Math.floor(slowest.held * 100) / 100);
  switch (stage) {
    case 'holding': {
      if (slowest.endsOn === null || !canStand(state)) return [];
      const left = Math.max(0, card.days - slowest.held);
      const why = `${held} days done${who}, if no reading falls below`;
      return [
        { act: 'days left', urgency: days, amount: Number(left.toFixed(2)), unit: 'days', by: slowest.endsOn, why },
      ];
    }
    case 'days done':
      return [
        takeOut(state, held),
        see(now, `${held} days held${who} without a break: fish move once every gate is met`),
      ];
    case 'clearing':
      return [
        see(now, `${held} days held${who}; two tests ${limits.firstTestOut.value} h apart show that copper is out`),
      ];
    case 'observing':
      return [
        see(
          now,
          `${rounded(Math.max(0, now - (state.outSince ?? now)), 1)} days since copper was out: observe, the gates say how long`,
        ),
      ];
    case 'ended':
      return [plainTask('nothing now', days, now, '0 fish are in this tank')];
    case 'hold broken':
    case 'raising':
    case 'set-up':
      return [];
  }
}

function see(now: number, why: string): Task {
  return plainTask('see QT.READY', days, now, why);
}

function takeOut({ last, card, now }: State, held: string): Task {
  const gone = Math.max(limits.copperGone.value, limits.copperOut.value * card.band.low);
  const changes = Math.max(1, Math.ceil(Math.log((last?.high ?? card.aim) / gone) / Math.LN2));
  const many = Number.isFinite(changes) ? `${changes} changes of half` : 'changes of half';
  const why = reason(
    `${held} days held: ${many} the water, copper-free`,
    'then carbon',
    'not into the sea, a stream or a storm drain',
  );
  return plainTask('take copper out', days, now, why);
}

/** No end is named for a hold that is in doubt, past its longest gap, or about to break. */
function canStand(state: State): boolean {
  const { last, card, now, treatment, signs } = state;
  if (last === null || now - last.when > card.longestGap || signs.step === 'stop copper') return false;
  if (!isComputable(state) || (openHold(treatment)?.row ?? null) !== null) return false;
  return last.low >= card.band.low - levelTolerance;
}
