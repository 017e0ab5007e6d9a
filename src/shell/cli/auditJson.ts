import { addressRange } from '../address/addressRange.js';
import { auditTable, cardTable, holdsTable, holdSpans, type Finding, type TableCell } from '../../index.js';
import { findingsInSheet } from '../locate/findingsInSheet.js';
import { sheetRow } from '../locate/sheetRow.js';
import type { AuditedFile, FileRefused } from './auditedFile.js';
import { shownTime } from './shownTime.js';

/** The findings of all files as JSON; times are `2026-03-01 08:00`, rows those of the sheet. */
export function auditJson(
  audits: readonly AuditedFile[],
  refused: readonly FileRefused[],
  remarks: readonly string[],
): string {
  return JSON.stringify({ audits: audits.map(auditOf), refused, remarks }, null, 2);
}

function auditOf({ file, audited }: AuditedFile): unknown {
  const { log, system, card, cardEntries, cardFrom, treatment } = audited;
  const findings = findingsInSheet(audited);
  const texts = auditTable(findings).rows;
  const spans = holdSpans(treatment.trace, treatment.terms, card.days);
  return {
    file,
    sheet: log.sheet,
    range: addressRange(log.range),
    system,
    card: {
      from: cardFrom,
      entries: cardTable(cardEntries, card).rows.map(objectOf(['name', 'value', 'unit', 'readAs'])),
    },
    severities: countBySeverity(findings),
    findings: findings.map(({ severity, code, when, row }, i) => {
      const [, , , finding, why, source] = texts[i] ?? [];
      return {
        severity,
        code,
        when: when === null ? null : shownTime(when),
        row,
        finding,
        why,
        source,
      };
    }),
    holds: holdsTable(spans).rows.map(([from, to, days, enough, endedBy, row]) => ({
      from: shownTime(Number(from)),
      to: shownTime(Number(to)),
      days,
      enough,
      endedBy,
      row: typeof row === 'number' ? sheetRow(audited, row) : null,
    })),
  };
}

function objectOf(names: readonly string[]): (row: readonly TableCell[]) => Record<string, TableCell> {
  return (row) => Object.fromEntries(names.map((name, i) => [name, row[i] ?? '']));
}

function countBySeverity(findings: readonly Finding[]): Record<'danger' | 'warning' | 'note', number> {
  const of = (wanted: Finding['severity']): number => findings.filter(({ severity }) => severity === wanted).length;
  return { danger: of('danger'), warning: of('warning'), note: of('note') };
}
