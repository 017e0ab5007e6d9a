import { auditRules } from '../rules/auditRules.js';
import type { Finding, FindingAt, Severity } from '../rules/finding.js';
import { foundBy } from '../rules/foundBy.js';
import type { Finder } from '../rules/rule.js';
import type { Treatment } from '../rules/treatment.js';

const order: readonly Severity[] = ['verdict', 'danger', 'warning', 'note'];

/**
 * What the rules find in a treatment: verdicts first, then dangers, warnings and notes, each by row; in one row causes
 * before what follows from them.
 *
 * @param treatment log and card
 * @param rules in any order: it carries no meaning
 * @returns findings as a table shows them
 */
export function auditFindings(treatment: Treatment, rules: readonly Finder[] = auditRules): readonly Finding[] {
  const found = rules.flatMap((rule) => foundBy(rule, treatment)).filter(isFinding);
  return found.sort(
    (a, b) =>
      order.indexOf(a.severity) - order.indexOf(b.severity) ||
      placeOf(a) - placeOf(b) ||
      (rankOf.get(a.code) ?? 0) - (rankOf.get(b.code) ?? 0),
  );
}

/** The verdict's lines keep their order, whatever row they name. */
function placeOf({ severity, row }: FindingAt): number {
  return severity === 'verdict' ? 0 : (row ?? 0);
}

/** Where a rule's findings stand among others of the same row: the more rules yield to it the earlier, else by code. */
const rankOf: ReadonlyMap<string, number> = new Map(
  auditRules
    .map((rule) => ({ codes: Object.keys(rule.codes), following: followersOf(rule) }))
    .sort((a, b) => b.following - a.following || ((a.codes[0] ?? '') < (b.codes[0] ?? '') ? -1 : 1))
    .flatMap(({ codes }, rank) => codes.map((code) => [code, rank] as const)),
);

function followersOf(rule: Finder): number {
  return auditRules.filter(({ yieldsTo }) => yieldsTo.includes(rule)).length;
}

function isFinding(found: FindingAt & { readonly code: string }): found is Finding {
  return rankOf.has(found.code);
}
