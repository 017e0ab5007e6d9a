import { urgencies } from '../task.js';
import { copperTests, looked, tested, untilTested } from './answers.js';
import type { Outcomes } from './outcome.js';

const { kills, fish } = urgencies;

/** The hold, the band, doses and changes. */
export const holdOutcomes: Outcomes = {
  'hold-broken': {
    against: ['take copper out', 'move fish'],
    acts: () => ['dose', ...copperTests, 'raise slowly', 'thin the solution', 'no copper'],
  },
  'level-below-between': {
    isOpen: untilTested,
    against: ['take copper out', 'move fish'],
    acts: tested,
  },
  'stopped-short': {
    against: ['take copper out', 'move fish'],
    acts: () => [...copperTests, 'dose'],
  },
  'above-band': {
    isOpen: ({ top }, _, last) => last !== null && last.high > top,
    against: ['dose'],
    acts: () => ['change water', 'test copper again', ...copperTests, 'lower copper, then wait'],
    urgency: kills,
  },
  'untested-stretch': {
    isOpen: untilTested,
    against: ['take copper out', 'move fish'],
    acts: tested,
  },
  'restarted-untested': {
    isOpen: untilTested,
    against: ['take copper out', 'move fish'],
    acts: tested,
  },
  'raised-too-fast': {
    acts: () => [...looked(), ...copperTests],
    urgency: fish,
  },
  'dose-too-large': {
    acts: () => [...looked(), ...copperTests],
    urgency: fish,
  },
  'double-dose': {
    isOpen: untilTested,
    against: ['dose'],
    acts: tested,
    urgency: kills,
  },
  'dose-untested': {
    isOpen: untilTested,
    against: ['dose'],
    acts: tested,
  },
  'unmatched-change': {
    isOpen: untilTested,
    against: ['dose'],
    acts: tested,
  },
  absorber: {
    acts: tested,
  },
  'copper-in-top-off': {
    isOpen: untilTested,
    against: ['dose'],
    acts: tested,
  },
};
