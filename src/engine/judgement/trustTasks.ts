import * as limits from '../limits/limits.js';
import { levelTolerance } from '../units/quantity.js';
import { rounded } from '../rules/phrases.js';
import { waterIn } from './measured.js';
import type { State } from './state.js';
import { plainTask, reason, urgencies, type Task } from './task.js';

const { untrusted } = urgencies;

/** A reading that is not believed is tested again; one that a later reading has shown to be a slip is set aside. */
export function trustTasks({ believed, card, aim, now, stage }: State): readonly Task[] {
  if (believed === null || stage === 'ended') return [];
  const { doubt, slips } = believed;
  const wrong = slips.slice(-2).map(({ row, written, expected }) => {
    const why = `${rounded(written, 3)} was a slip, the log leads to ${rounded(expected, 3)}: write void ${rounded(written, 3)} in row ${row}`;
    return plainTask(`correct row ${row}`, untrusted, now, why);
  });
  if (doubt === null) return wrong;
  const { row, written, expected, error } = doubt;
  const share = written > card.band.high + levelTolerance ? Math.min(limits.mostChange.value, 1 - aim / written) : 0;
  const why = reason(
    `${rounded(written, 3)} in row ${row}, the log leads to ${rounded(expected, 3)} ± ${rounded(error, 2)}: test before any dose`,
    share > 0 ? `if the same: change ${waterIn(share * card.volume, 'down')} L` : '',
  );
  return [plainTask('test copper again', untrusted, now, why), ...wrong];
}
