import { seededNumbers } from '../../../../src/engine/level/seededNumbers.js';
import type { Finding } from '../../../../src/engine/rules/finding.js';
import { auditOf } from './auditOf.js';
import { nextFaultlessLog } from './faultlessLog.js';
import type { FaultKind } from './faultKind.js';
import type { KeeperLog, KeeperRow } from './keeperLog.js';
import { recordKinds } from './recordKinds.js';
import { slipKinds } from './slipKinds.js';
import { waterKinds } from './waterKinds.js';
import { writtenLog } from './writtenLog.js';

export const faultKinds: readonly FaultKind[] = [...slipKinds, ...waterKinds, ...recordKinds];

/** At least so many planted faults named, at most so many logs without a fault with a danger or warning. [%] */
export const goals = { namedPercent: 98, falsePercent: 2 };

/** A log whose fault the audit did not name at its row. */
export interface Missed {
  readonly seed: number;
  readonly form: string;
  readonly rows: readonly number[] | 'anywhere';
  /** What it found instead. */
  readonly found: readonly string[];
}

export interface KindFigures {
  readonly name: string;
  readonly planted: number;
  readonly named: number;
  readonly missed: readonly Missed[];
}

/** Plants one kind of fault into so many logs, and counts where the audit names it. */
export function figuresOf(kind: FaultKind, logs: number, firstSeed: number): KindFigures {
  const missed: Missed[] = [];
  for (let index = 0; index < logs; index++) {
    const { log, at, seed } = plantedLog(kind, firstSeed + index * 104_729);
    const written = writtenLog(log, seededNumbers(seed + 1));
    const findings = auditOf(written);
    const rows = at === 'anywhere' ? at : at.map((row) => written.rowOf.get(row) ?? -1);
    const isIts = ({ code, row }: Finding): boolean =>
      kind.codes.includes(code) && (rows === 'anywhere' || (row !== null && rows.includes(row)));
    if (!findings.some(isIts)) missed.push({ seed, form: log.form, rows, found: findings.map(inShort) });
  }
  return { name: kind.name, planted: logs, named: logs - missed.length, missed };
}

interface Planted {
  readonly log: KeeperLog;
  readonly at: readonly KeeperRow[] | 'anywhere';
  readonly seed: number;
}

/** The first log from a seed on that has a place for the fault, with the fault in it. */
export function plantedLog(kind: FaultKind, from: number): Planted {
  for (let seed = from; seed < from + 2000 * 17; seed += 17) {
    const { log } = nextFaultlessLog(seed);
    const at = kind.plant(log, seededNumbers(seed + 2));
    if (at !== null) return { log, at, seed };
  }
  throw new Error(`no log has a place for ${kind.name}`);
}

export interface FaultlessFigures {
  readonly logs: number;
  /** Logs with a danger or a warning. */
  readonly raised: number;
  readonly byCode: ReadonlyMap<string, number>;
  /** Simulated tanks that left their band, and so were no logs without a fault. */
  readonly leftBand: number;
}

/** Logs without a fault, and what the audit says of them all the same. */
export function faultlessFigures(logs: number, firstSeed: number): FaultlessFigures {
  const byCode = new Map<string, number>();
  let [raised, leftBand] = [0, 0];
  for (let index = 0; index < logs; index++) {
    const { log, left } = nextFaultlessLog(firstSeed + index);
    leftBand += left;
    const grave = auditOf(writtenLog(log, seededNumbers(firstSeed + index))).filter(
      ({ severity }) => severity === 'danger' || severity === 'warning',
    );
    if (grave.length > 0) raised++;
    for (const code of new Set(grave.map((finding) => finding.code))) byCode.set(code, (byCode.get(code) ?? 0) + 1);
  }
  return { logs, raised, byCode, leftBand };
}

function inShort({ severity, row, code }: Finding): string {
  return `${severity} ${row ?? '-'} ${code}`;
}
