import type { FactKind } from '../../words/fact.js';
import { urgencies, type Act } from '../task.js';
import { copperTests, looked } from './answers.js';
import type { Outcomes } from './outcome.js';

/** The row that answers what a note says; any other kind asks for a look at the fish. */
const answers: Partial<Readonly<Record<FactKind, readonly Act[]>>> = {
  leak: ['switch off'],
  'broken heater': ['switch off'],
  'power or pump off': ['give air'],
  'all fish at the surface': ['give air'],
  ammonia: ['change water', 'test ammonia', 'test ammonia and oxygen', 'test copper, ammonia and oxygen'],
  invertebrates: ['move out'],
  hyposalinity: ['no copper'],
  overdose: [...copperTests, 'change water'],
  'wrong bottle': ['check the bottle'],
  'dosed twice': copperTests,
  'copper in the top-off': copperTests,
  absorbers: copperTests,
  'new kit or meter': ['compare the kits'],
  'signs: not copper': ['treat for something else'],
};

/** Warnings that make the next dose a guess. */
const beforeADose: readonly FactKind[] = ['wrong bottle', 'dosed twice', 'new kit or meter', 'ammonia binder'];

/** What only a note says: open for 48 h. */
export const wordsOutcomes: Outcomes = {
  'said-in-words': {
    againstNow: ({ severity, kind }) => (severity === 'danger' || beforeADose.includes(kind) ? ['dose'] : []),
    acts: ({ kind }) => answers[kind] ?? looked(),
    urgencyNow: ({ severity }) => (severity === 'danger' ? urgencies.kills : urgencies.fish),
  },
};
