import { auditFindings } from '../../../../src/engine/audit/auditFindings.js';
import { cardCells, cardEntries } from '../../../../src/engine/log/cardRead/cardEntries.js';
import { readCard } from '../../../../src/engine/log/cardRead/readCard.js';
import { readLog } from '../../../../src/engine/log/table/readLog.js';
import type { Finding } from '../../../../src/engine/rules/finding.js';
import type { Treatment } from '../../../../src/engine/rules/treatment.js';
import { treatmentOf } from '../../../../src/engine/rules/treatmentOf.js';
import type { Cell } from '../../../../src/engine/units/cell.js';
import type { WrittenLog } from './writtenLog.js';

const cellOf = (raw: unknown): Cell => (raw === undefined ? null : (raw as Cell));

/** What the audit finds in a log as it stands in a sheet. */
export function auditOf(written: Pick<WrittenLog, 'range' | 'card'>): readonly Finding[] {
  return auditFindings(treatmentIn(written));
}

/** A log as it stands in a sheet, with what the engine makes of it. */
export function treatmentIn({ range, card }: Pick<WrittenLog, 'range' | 'card'>): Treatment {
  const entries = cardEntries(card, cellOf);
  if (!entries.ok) throw new Error(JSON.stringify(entries.problem));
  const read = readCard(cardCells(entries.value));
  if (!read.ok) throw new Error(JSON.stringify(read.problem));
  const log = readLog({ log: { range, firstRow: 1, cellOf }, gallon: read.value.gallon, needs: ['time', 'copper'] });
  if (!log.ok) throw new Error(JSON.stringify(log.problem));
  return treatmentOf(log.value, read.value, undefined);
}
