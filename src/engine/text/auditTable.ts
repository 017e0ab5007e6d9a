import { columnsOf, type Table } from '../result/table.js';
import type { Finding } from '../rules/finding.js';
import { findingText } from './findingText.js';
import { sourceText } from './sourceText.js';

export const auditColumns = columnsOf({
  Severity: 'text',
  When: 'time',
  Row: 'number',
  Finding: 'text',
  Why: 'text',
  Source: 'text',
});

/** What the rules find in a log, as AUDIT spills it. */
export function auditTable(findings: readonly Finding[]): Table {
  return {
    columns: auditColumns,
    rows: findings.map((each) => {
      const { finding, why } = findingText(each);
      return [each.severity, each.when ?? '', each.row ?? '', finding, why, sourceText(each.source)];
    }),
  };
}
