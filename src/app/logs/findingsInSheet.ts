import type { Finding } from '../../engine/index.js';
import type { FoundLog } from './foundLog.js';
import { sheetRow } from './sheetRow.js';

interface FindingsOfLog {
  readonly log: FoundLog;
  readonly findings: readonly Finding[];
}

/** The findings of an audit with the sheet's rows in them, in their texts too, where the log does not begin in row 1. */
export function findingsInSheet(audited: FindingsOfLog): readonly Finding[] {
  if (audited.log.range.firstRow === 0) return audited.findings;
  return audited.findings.map((finding) => moved(finding, (row) => sheetRow(audited, row)));
}

/** What holds one row or several; other numbers, such as a count of rows, stay. */
const rowKeys = new Set(['row', 'fromRow', 'toRow', 'openSince', 'further']);

function moved<T extends object>(value: T, toSheet: (row: number) => number): T {
  const entries = Object.entries(value).map(([key, part]: [string, unknown]) => {
    const isRows = rowKeys.has(key) || (key === 'rows' && Array.isArray(part));
    if (isRows) return [key, Array.isArray(part) ? part.map(Number).map(toSheet) : rowIn(part, toSheet)];
    // A cell of a row that a sentence names, such as "row 3: change".
    if (key === 'field' && typeof part === 'string') return [key, fieldInSheet(part, toSheet)];
    const isPlainObject = typeof part === 'object' && part !== null && !Array.isArray(part);
    return [key, isPlainObject ? moved(part, toSheet) : part];
  });
  return Object.fromEntries(entries) as T;
}

function rowIn(part: unknown, toSheet: (row: number) => number): unknown {
  return typeof part === 'number' ? toSheet(part) : part;
}

function fieldInSheet(field: string, toSheet: (row: number) => number): string {
  return field.replace(/^row (\d+)(?=:|$)/, (_, row: string) => `row ${toSheet(Number(row))}`);
}
