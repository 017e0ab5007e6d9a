import { auditRules } from '../rules/auditRules.js';
import type { Finding } from '../rules/finding.js';
import type { FindingWords, Rule, Spoken } from '../rules/rule.js';
import { message } from './message.js';
import { toleranceReasons } from './toleranceReasons.js';

const rules: readonly Rule<{ readonly code: string }>[] = auditRules;
const ruleOf = new Map(rules.flatMap((rule) => Object.keys(rule.codes).map((code) => [code, rule] as const)));

const spoken: Spoken = { problem: message, toleranceReason: (reason) => toleranceReasons[reason] };

/** A finding in words: what was found, and the rule behind it. */
export function findingText(finding: Finding): FindingWords {
  const rule = ruleOf.get(finding.code);
  if (rule === undefined) throw new Error(`no rule has the code ${finding.code}`);
  return rule.words(finding, spoken);
}
