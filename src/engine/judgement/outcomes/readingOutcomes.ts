import * as limits from '../../limits/limits.js';
import { hoursPerDay } from '../../units/quantity.js';
import { urgencies } from '../task.js';
import { always, copperTests, corrected, isOfLastTest, tested } from './answers.js';
import type { Outcomes } from './outcome.js';

const { kills, untrusted } = urgencies;

/** Readings and cells that are not to be trusted, and the meter. */
export const readingOutcomes: Outcomes = {
  'swapped-rows': {
    isOpen: always,
    against: ['take copper out', 'move fish'],
    acts: corrected,
    urgency: untrusted,
  },
  'unit-slip': {
    isOpen: always,
    against: ['take copper out', 'move fish'],
    acts: (finding) => [...corrected(finding), 'test copper again'],
    urgency: untrusted,
  },
  'swapped-systems': {
    isOpen: always,
    against: ['take copper out', 'move fish'],
    acts: (finding) => [...corrected(finding), 'test copper again'],
    urgency: untrusted,
  },
  'unexplained-reading': {
    against: ['take copper out', 'move fish'],
    acts: () => ['test copper again', ...copperTests],
    urgency: untrusted,
  },
  'wrong-form': {
    isOpen: (_, { now }, last) => last !== null && now - last.when <= limits.eventOpen.value / hoursPerDay,
    // Low readings that fit no other form may be those of a raise that was broken off.
    againstNow: ({ side, fits }) =>
      side === 'above' || fits !== null ? ['dose', 'change water', 'take copper out', 'move fish'] : [],
    acts: () => ['check the card'],
    urgency: kills,
  },
  'unreadable-copper': {
    isOpen: isOfLastTest,
    against: ['dose', 'change water', 'take copper out', 'move fish'],
    acts: corrected,
    urgency: untrusted,
  },
  'unreadable-cell': {
    isOpen: isOfLastTest,
    against: ['dose', 'change water'],
    acts: corrected,
    urgency: untrusted,
  },
  'row-without-time': {
    isOpen: isOfLastTest,
    against: ['dose', 'change water'],
    acts: corrected,
    urgency: untrusted,
  },
  'bare-zero': {
    isOpen: always,
    against: ['dose', 'take copper out', 'move fish'],
    acts: corrected,
    urgency: untrusted,
  },
  'readings-on-limit': {
    isOpen: (finding, _, last) => finding.row === last?.row || finding.rows.indexOf(last?.row ?? -1) >= 0,
    acts: () => [...copperTests, 'dose'],
  },
  'meter-cannot-show': {
    isOpen: always,
    acts: tested,
  },
};
