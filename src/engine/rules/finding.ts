import type { auditRules } from './auditRules.js';

/** What any rule may find: each rule declares the data of its own findings. */
export type Finding = ReturnType<(typeof auditRules)[number]['find']>[number];

export type { FindingAt, Severity } from './rule.js';
