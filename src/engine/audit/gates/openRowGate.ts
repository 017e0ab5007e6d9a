import type { ColumnKind } from '../../log/headings/columnKinds.js';
import { openHold } from '../../rules/openHold.js';
import type { Treatment } from '../../rules/treatment.js';
import type { Gate } from './gate.js';

/** Cells on which a gate hangs. */
const deciding: readonly ColumnKind[] = ['copper', 'time', 'signs', 'dead', 'fish in', 'fish out'];

/** Whether every row since the hold began can be read: one that cannot leaves the question open. */
export function openRowGate(treatment: Treatment): Gate {
  const { log, trace } = treatment;
  const from = trace.holds[0]?.from ?? -Infinity;
  const rows = new Set<number>();
  for (const { kind, when, row } of log.faults) {
    if (deciding.includes(kind) && !(when < from)) rows.add(row);
  }
  const open = openHold(treatment);
  if (open !== null && open.row !== null) rows.add(open.row);
  if (rows.size === 0) return { name: 'no open row', met: 'yes', since: null, why: { code: 'every-row-read' } };
  const why = { code: 'open-rows', rows: [...rows].sort((a, b) => a - b) } as const;
  return { name: 'no open row', met: 'no', since: null, why };
}
