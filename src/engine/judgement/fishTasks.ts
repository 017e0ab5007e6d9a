import * as limits from '../limits/limits.js';
import { rounded } from '../rules/phrases.js';
import { hoursPerDay, levelTolerance } from '../units/quantity.js';
import type { State } from './state.js';
import { plainTask, reason, urgencies, type Task } from './task.js';
import { isTestedSince } from './waterSince.js';
import { waterIn } from './measured.js';

/** Signs stand unanswered: no dose. */
export function isIll({ signs: { step } }: State): boolean {
  return step === 'test first' || step === 'lower and wait' || step === 'stop copper';
}

/** What the last text about the fish asks for. */
export function fishTasks(state: State): readonly Task[] {
  const { signs, now, card, last, stage, believed } = state;
  const { step, when } = signs;
  if (stage === 'ended' || stage === 'set-up') return [];
  const task = (act: Task['act'], why: string): Task => plainTask(act, urgencies.fish, now, why);
  const ago = `${rounded(Math.max(0, now - when) * hoursPerDay, 0)} h ago`;
  switch (step) {
    case 'test first':
    case 'lower and wait':
      if (!isTestedSince(state.treatment, when, 'ammonia')) {
        return [
          task('test ammonia and oxygen', `${ago} signs: disease, ammonia and copper look the same (common practice)`),
        ];
      }
      if (last === null || last.low < card.band.low - levelTolerance) {
        return [task('no copper', `${ago} signs, level below the band: no dose until the fish eats; a hold may break`)];
      }
      return [lowering(state, ago)];
    case 'raise slowly': {
      // A reading that is not believed is tested again before anything is raised on it.
      const isDoubted = (believed?.doubt ?? null) !== null;
      const isLow = last !== null && last.low < card.band.low - levelTolerance && !isDoubted;
      return isLow && stage !== 'observing' && stage !== 'clearing'
        ? [task(step, `${rounded(last.low, 3)} mg/L and recovered: raise in small doses, test before each`)]
        : [];
    }
    case 'stop copper':
      return [task(step, `${ago} signs came back: that fish out of copper, another treatment; an aquatic vet decides`)];
    case 'unread':
    case '':
      return [];
  }
}

/** In the band, ammonia tested: down to the aim of an intolerant fish, which keeps the hold. */
function lowering({ last, aim, card, now }: State, ago: string): Task {
  const from = last?.high ?? NaN;
  const share = Math.min(limits.mostChange.value, 1 - aim / from);
  const amount = share > 0 && from !== Infinity ? waterIn(share * card.volume, 'down') : 0;
  if (amount > 0) {
    const to = from * (1 - amount / card.volume);
    const why = reason(
      `${rounded(from, 3)} to ${rounded(to, 3)} mg/L by ${rounded((100 * amount) / card.volume, 0)} % copper-free water, which keeps the hold`,
    );
    return { act: 'lower copper, then wait', urgency: urgencies.fish, amount, unit: 'L', by: now, why };
  }
  return plainTask(
    'look at the fish',
    urgencies.fish,
    now,
    `${ago} signs at the lowest level that keeps the hold; lowering breaks it, a vet decides`,
  );
}
