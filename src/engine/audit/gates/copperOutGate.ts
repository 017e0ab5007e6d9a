import * as limits from '../../limits/limits.js';
import type { Treatment } from '../../rules/treatment.js';
import { hoursPerDay, secondDays } from '../../units/quantity.js';
import { copperGone } from './copperGone.js';
import type { Gate } from './gate.js';

/** Copper comes back off silicone and sand: these tests after the last change show that it does not. [Practice] [days] */
const firstTest = limits.firstTestOut.value / hoursPerDay;
const secondTest = limits.secondTestOut.value / hoursPerDay;

/** Whether the copper is out, by a test 48 h and another 7 days after the last change of water that took it out. */
export function copperOutGate(treatment: Treatment): Gate {
  const name = 'copper out';
  const no = (why: Gate['why']): Gate => ({ name, met: 'no', since: null, why });
  const gone = copperGone(treatment);
  switch (gone.kind) {
    case 'not begun':
      return no({ code: 'not-tested-out' });
    case 'in':
      return no({ code: 'copper-in', level: gone.level, row: gone.row, when: gone.when, limit: gone.limit });
    case 'out': {
      const { change, tests } = gone;
      const first = tests.find((when) => when >= change + firstTest - secondDays);
      if (first === undefined) return no({ code: 'test-due', after: 'first', change, due: change + firstTest });
      const second = tests.find((when) => when > first && when >= change + secondTest - secondDays);
      if (second === undefined) return no({ code: 'test-due', after: 'second', change, due: change + secondTest });
      return { name, met: 'yes', since: second, why: { code: 'copper-out', change, tested: second } };
    }
  }
}
