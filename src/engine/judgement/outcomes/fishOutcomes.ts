import * as limits from '../../limits/limits.js';
import type { Finding } from '../../rules/finding.js';
import type { Treatment } from '../../rules/treatment.js';
import { levelTolerance } from '../../units/quantity.js';
import { urgencies } from '../task.js';
import { isTestedSince, lastFreeAmmonia, lastSalinity } from '../waterSince.js';
import { looked } from './answers.js';
import type { Outcomes } from './outcome.js';

const { kills, fish } = urgencies;

/** Copper and ammonia, after the deaths. */
function isWaterTested({ when }: Finding, treatment: Treatment): boolean {
  const at = when ?? -Infinity;
  return isTestedSince(treatment, at, 'copper') && isTestedSince(treatment, at, 'ammonia');
}

/** The fish and their water. */
export const fishOutcomes: Outcomes = {
  'moved-early': {
    acts: looked,
    urgency: fish,
  },
  'moved-against-terms': {
    acts: looked,
    urgency: fish,
  },
  newcomer: {
    // Nothing is raised in the first day of an untreated fish.
    againstNow: ({ when }, { now }) => (now - (when ?? NaN) <= 1 ? ['dose', 'move fish'] : ['move fish']),
    acts: looked,
    urgency: fish,
  },
  'conditioner-noted': {
    isOpen: ({ when }, { now }) => now - (when ?? NaN) <= 1,
    against: ['dose'],
    acts: () => ['look at the fish', 'move out', 'change water'],
    urgency: kills,
  },
  'low-salinity': {
    isOpen: (_, treatment) => (lastSalinity(treatment) ?? Infinity) < limits.salinityWarning.value,
    against: ['dose'],
    acts: () => ['no copper'],
    urgency: kills,
  },
  'low-salinity-treatment': {
    against: ['dose'],
    acts: () => ['no copper'],
    urgency: kills,
  },
  deaths: {
    againstNow: (finding, treatment) =>
      isWaterTested(finding, treatment) ? ['take copper out', 'move fish'] : ['dose', 'take copper out', 'move fish'],
    acts: (finding, treatment) =>
      isWaterTested(finding, treatment) ? ['call a vet'] : ['test copper, ammonia and oxygen'],
    urgency: kills,
  },
  'second-signs': {
    against: ['dose', 'move fish'],
    acts: () => ['move out', 'stop copper'],
    urgency: fish,
  },
  'unionised-ammonia': {
    isOpen: (_, treatment) => (lastFreeAmmonia(treatment)?.free ?? 0) >= limits.ammoniaWarning.value - levelTolerance,
    against: ['dose'],
    acts: () => ['change water'],
    urgency: kills,
  },
};
