import { references } from '../references/references.js';
import { columnsOf, type Table } from '../result/table.js';
import { auditRules } from '../rules/auditRules.js';
import type { Rule } from '../rules/rule.js';

const rulesColumns = columnsOf({ 'It finds': 'text', 'What it looks for': 'text', Source: 'text' });

const rules: readonly Rule<{ readonly code: string }>[] = auditRules;

/** Every rule of AUDIT: its codes with their severities, what it looks for, where it comes from. */
export function rulesTable(): Table {
  return {
    columns: rulesColumns,
    rows: rules.map(({ codes, about, sources }) => [
      Object.entries(codes)
        .map(([code, severities]) => `${code} (${severities.join(', ')})`)
        .join('; '),
      about,
      sources.map((key) => references[key].cite).join('; '),
    ]),
  };
}
