import { auditFindings } from '../audit/auditFindings.js';
import { fishAgainstCopper } from './fishAgainstCopper.js';
import * as limits from '../limits/limits.js';
import type { Finding } from '../rules/finding.js';
import type { Treatment } from '../rules/treatment.js';
import { hoursPerDay, secondDays } from '../units/quantity.js';
import type { LastTest } from './lastTest.js';
import { fishOutcomes } from './outcomes/fishOutcomes.js';
import { holdOutcomes } from './outcomes/holdOutcomes.js';
import type { Against, Outcome, Outcomes } from './outcomes/outcome.js';
import { readingOutcomes } from './outcomes/readingOutcomes.js';
import { wordsOutcomes } from './outcomes/wordsOutcomes.js';
import { urgencies, type Act } from './task.js';

/** A danger or a warning of AUDIT that is not over. */
export interface OpenFinding {
  readonly finding: Finding;
  readonly against: readonly Against[];
  /** Any of them answers it. */
  readonly acts: readonly Act[];
  readonly urgency: number;
}

const outcomes: Outcomes = { ...holdOutcomes, ...readingOutcomes, ...fishOutcomes, ...wordsOutcomes };

/** What AUDIT finds at this moment and what is still open of it, dangers first. */
export function openFindings(treatment: Treatment, last: LastTest | null): readonly OpenFinding[] {
  return auditFindings(treatment).flatMap((finding) => {
    if (finding.severity !== 'danger' && finding.severity !== 'warning') return [];
    if (finding.code === 'copper-intolerant-fish') return intolerant(treatment, finding);
    const outcome: Outcome<Finding> | undefined = outcomes[finding.code];
    if (!(outcome?.isOpen?.(finding, treatment, last) ?? isRecent(treatment, finding.when))) return [];
    const acts = outcome?.acts(finding, treatment) ?? ['look at the fish'];
    const isUnknown = outcome === undefined && finding.severity === 'danger';
    const own = outcome?.urgencyNow?.(finding) ?? outcome?.urgency;
    const urgency = isUnknown ? urgencies.kills : (own ?? urgencies.test);
    return [{ finding, against: against(finding, treatment, outcome), acts, urgency }];
  });
}

function against(finding: Finding, treatment: Treatment, outcome: Outcome<Finding> | undefined): readonly Against[] {
  if (outcome === undefined) return finding.severity === 'danger' ? ['dose'] : [];
  return outcome.againstNow?.(finding, treatment) ?? outcome.against ?? [];
}

function isRecent({ now }: Treatment, when: number | null): boolean {
  return when === null || now - when <= limits.eventOpen.value / hoursPerDay + secondDays;
}

/** Open as long as that animal is in. */
function intolerant(
  treatment: Treatment,
  finding: Extract<Finding, { code: 'copper-intolerant-fish' }>,
): readonly OpenFinding[] {
  const isIn = fishAgainstCopper(treatment).some(({ fish }) => fish === finding.fish);
  return isIn ? [{ finding, against: ['dose'], acts: ['move out'], urgency: urgencies.kills }] : [];
}
