import * as limits from '../limits/limits.js';
import { hoursPerDay } from '../units/quantity.js';
import { doseTasks } from './copperTasks.js';
import { dayTasks } from './dayTasks.js';
import { fishTasks } from './fishTasks.js';
import { testTasks } from './nextTest.js';
import type { Against } from './outcomes/outcome.js';
import type { OpenFinding } from './openFindings.js';
import type { State } from './state.js';
import { plainTask, urgencies, type Task } from './task.js';
import { trustTasks } from './trustTasks.js';
import { waterTasks } from './waterTasks.js';

const mostRows = 7;

/**
 * What to do at the state's moment, in the order of urgency: what kills, what cannot be trusted, the fish, copper, the
 * next test, days and gates. Nothing that an open finding of AUDIT speaks against, and a row for each that is open.
 */
export function doNow(state: State): readonly Task[] {
  const own = [
    ...waterTasks(state),
    ...trustTasks(state),
    ...fishTasks(state),
    ...doseTasks(state),
    ...testTasks(state),
    ...dayTasks(state),
  ].filter((task) => !isSpokenAgainst(task, state));
  const tasks = state.open.reduce<readonly Task[]>((all, finding) => withAnswer(all, finding, state.now), own);
  const [...ordered] = tasks;
  ordered.sort((a, b) => a.urgency - b.urgency);
  return ordered.filter(({ act }, at) => ordered.findIndex((other) => other.act === act) === at).slice(0, mostRows);
}

const spokenOf: Readonly<Partial<Record<Task['act'], Against>>> = {
  dose: 'dose',
  'raise slowly': 'dose',
  'thin the solution': 'dose',
  'change water': 'change water',
  'lower copper, then wait': 'change water',
  'take copper out': 'take copper out',
  'move fish': 'move fish',
};

function isSpokenAgainst({ act, urgency }: Task, state: State): boolean {
  const what = spokenOf[act];
  if (what === undefined || (what === 'change water' && urgency === urgencies.kills)) return false;
  return state.isAgainst(what);
}

/** Puts the row that answers a finding in, or moves it to the front where the finding is a danger. */
function withAnswer(tasks: readonly Task[], { finding, acts, urgency }: OpenFinding, now: number): readonly Task[] {
  const { severity, when } = finding;
  const answer = tasks.find(({ act }) => acts.indexOf(act) >= 0);
  if (answer === undefined) {
    const isLate = when !== null && now - when > limits.overdueAfter.value / hoursPerDay;
    const why = { finding, overdue: isLate ? when : null };
    return [...tasks, ...acts.slice(0, 1).map((act) => plainTask(act, urgency, now, why))];
  }
  if (severity !== 'danger' || answer.urgency <= urgency) return tasks;
  return tasks.map((task) => (task === answer ? { ...task, urgency } : task));
}
