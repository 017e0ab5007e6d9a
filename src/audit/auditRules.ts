import type { Rule } from '../rules/rule.js';

/** Every rule, those that name causes first: what merely follows from a named cause is not found again. */
export const auditRules: readonly Rule[] = [];
