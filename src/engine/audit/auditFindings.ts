import type { Finding, Severity } from '../rules/finding.js';
import type { Treatment } from '../rules/treatment.js';
import { auditRules } from './auditRules.js';

const order: readonly Severity[] = ['verdict', 'danger', 'warning', 'note'];

/** What the rules find in a treatment: verdicts first, then dangers, warnings and notes, each by row. */
export function auditFindings(treatment: Treatment): readonly Finding[] {
  const found: Finding[] = [];
  const named = new Set<number>();
  for (const rule of auditRules) {
    const findings = rule(treatment, named);
    for (const finding of findings) {
      found.push(finding);
      if (finding.row !== null && isCause(finding)) named.add(finding.row);
    }
  }
  return found.sort((a, b) => order.indexOf(a.severity) - order.indexOf(b.severity) || placeOf(a) - placeOf(b));
}

/** What nothing explains is no cause: whatever else the reading does is found as well. */
function isCause({ severity, code }: Finding): boolean {
  return severity !== 'verdict' && severity !== 'note' && code !== 'unexplained-reading';
}

/** The verdict's lines keep their order, whatever row they name. */
function placeOf({ severity, row }: Finding): number {
  return severity === 'verdict' ? 0 : (row ?? 0);
}
