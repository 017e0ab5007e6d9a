import { addressRange } from '../../sheet/index.js';
import {
  auditTable,
  cardTable,
  holdsTable,
  holdSpans,
  isoFromSerial,
  type Finding,
  type TableCell,
} from '../../engine/index.js';
import type { AuditedFile, FileRefused } from './auditedFile.js';

const unseen = /[\u007f-\u009f\u200e\u200f\u2028-\u202e\u2066-\u2069]/g;

/** The findings of all files as JSON; times are `2026-03-01 08:00`, rows those of the sheet. */
export function auditJson(
  audits: readonly AuditedFile[],
  refused: readonly FileRefused[],
  remarks: readonly string[],
): string {
  return escaped(JSON.stringify({ audits: audits.map(auditOf), refused, remarks }, null, 2));
}

/** Characters that a terminal obeys or that nobody sees are escaped; to a program it is the same text. */
function escaped(json: string): string {
  return json.replace(unseen, (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`);
}

function auditOf({ file, audited }: AuditedFile): unknown {
  const { log, system, card, cardEntries, cardFrom, treatment, findings } = audited;
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
        when: when === null ? null : isoFromSerial(when),
        row,
        finding,
        why,
        source,
      };
    }),
    holds: holdsTable(spans).rows.map(([from, to, days, enough, endedBy, row]) => ({
      from: isoFromSerial(Number(from)),
      to: isoFromSerial(Number(to)),
      days,
      enough,
      endedBy,
      row: typeof row === 'number' ? row : null,
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
