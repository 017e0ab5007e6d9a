import { doNow } from '../../../../src/engine/judgement/doNow.js';
import { stateOf } from '../../../../src/engine/judgement/state.js';
import { systemsNow } from '../../../../src/engine/judgement/systemsNow.js';
import { plainTask, urgencies } from '../../../../src/engine/judgement/task.js';
import { treatmentOf } from '../../../../src/engine/rules/treatmentOf.js';
import { doNowTable } from '../../../../src/engine/text/doNowTable.js';
import { systemsTable } from '../../../../src/engine/text/systemsTable.js';
import { breaches } from './breaches.js';
import { openByAudit } from './openByAudit.js';
import { randomLog } from './randomLog.js';

/** Of some thousands that were tried, those that have broken the law once. */
const brokeIt = [318, 1127, 1146, 1189, 1195, 1388, 1460, 1851, 1852, 2919];
const logs = [...Array.from({ length: 300 }, (_, index) => index + 1), ...brokeIt].map(randomLog);

const judged = logs.flatMap(({ seed, whole, moments }) =>
  moments.map((now) => {
    const treatment = treatmentOf(whole.log, whole.card, now);
    const state = stateOf(treatment);
    return { name: `seed ${seed} at ${now.toFixed(2)}`, whole, now, treatment, state, tasks: doNow(state) };
  }),
);

describe('the law of DONOW and SYSTEMS', () => {
  it('is tried on all forms, and on many open dangers of many kinds', () => {
    for (const form of ['sulfate', 'amine', 'chelated'])
      expect(logs.filter((log) => log.form === form).length).toBeGreaterThan(40);
    const open = judged.flatMap(({ treatment }) => openByAudit(treatment)).map(({ finding }) => finding);
    expect(open.filter(({ severity }) => severity === 'danger').length).toBeGreaterThan(150);
    expect(new Set(open.map(({ code }) => code)).size).toBeGreaterThan(15);
    expect(judged.filter(({ tasks }) => tasks.some(({ act }) => act === 'dose')).length).toBeGreaterThan(30);
    expect(judged.filter(({ tasks }) => tasks.some(({ act }) => act === 'days left')).length).toBeGreaterThan(50);
  });

  it('holds for every random log and moment', () => {
    const broken = judged.flatMap(({ name, treatment, state, tasks }) =>
      breaches(treatment, tasks, state.stage).map((breach) => `${name}: ${breach}`),
    );
    expect(broken).toEqual([]);
  });

  it('is broken by a table that doses whatever is open, or says nothing of it: the test can fail', () => {
    const dose = { ...plainTask('dose', urgencies.copper, 1, '1 mL'), amount: 0.1, unit: 'mL' } as const;
    const none = plainTask('nothing now', urgencies.days, 1, '0 things to do');
    const kinds = judged.flatMap(({ treatment, state }) => breaches(treatment, [dose, none], state.stage));
    expect(kinds.filter((breach) => breach.startsWith('dose against')).length).toBeGreaterThan(150);
    expect(kinds.filter((breach) => breach.startsWith('silent on')).length).toBeGreaterThan(100);
  });

  it('gives SYSTEMS the first row of DONOW that is due', () => {
    // One moment of each log: every one of them is judged once more for this.
    const oneEach = judged.filter(({ whole }, at) => whole !== judged[at - 1]?.whole);
    expect(oneEach).toHaveLength(logs.length);
    const different = oneEach.flatMap(({ name, whole, now, tasks }) => {
      const said = systemsTable(systemsNow(whole.log, [{ name: '', card: whole.card }], now), now).rows[0]?.[6];
      const due = doNowTable(tasks).rows.find(([, , , by]) => Number(by) <= now + 1e-5);
      const expected = due === undefined ? 'nothing now' : due.slice(0, 3).filter((cell) => cell !== '');
      const text = typeof expected === 'string' ? expected : expected.join(' ');
      return said === text ? [] : [`${name}: ${String(said)}, not ${text}`];
    });
    expect(different).toEqual([]);
  });
});
