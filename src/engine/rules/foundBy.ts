import type { Finder } from './rule.js';
import type { Treatment } from './treatment.js';

const known = new WeakMap<Treatment, Map<Finder, ReturnType<Finder['find']>>>();

/**
 * What a rule finds in a treatment, once the rules that it yields to have been run. Worked out once for a treatment, so
 * that it does not matter who asks first.
 *
 * @param rule one rule
 * @param treatment what it looks at
 * @returns its findings in its own order
 */
export function foundBy(rule: Finder, treatment: Treatment): ReturnType<Finder['find']> {
  const found = known.get(treatment) ?? new Map<Finder, ReturnType<Finder['find']>>();
  known.set(treatment, found);
  const before = found.get(rule);
  if (before !== undefined) return before;
  const findings = rule.find(treatment, namedBy(rule.yieldsTo, treatment));
  found.set(rule, findings);
  return findings;
}

/** The rows for which one of these rules names a cause; a note names none. */
function namedBy(rules: readonly Finder[], treatment: Treatment): ReadonlySet<number> {
  const named = new Set<number>();
  for (const rule of rules) {
    for (const { severity, row } of foundBy(rule, treatment)) {
      if (row !== null && (severity === 'danger' || severity === 'warning')) named.add(row);
    }
  }
  return named;
}
