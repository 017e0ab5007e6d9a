import type { SeededNumbers } from '../../../../src/engine/level/seededNumbers.js';
import type { Finding } from '../../../../src/engine/rules/finding.js';
import type { KeeperLog, KeeperRow } from './keeperLog.js';

/** A fault that the planter puts into a log without one. */
export interface FaultKind {
  readonly name: string;
  /** What the audit should call it; several where the fault has two names. */
  readonly codes: readonly Finding['code'][];
  /**
   * Plants it, and gives the rows at any of which it may be named; `anywhere` where it is of the log as a whole, null
   * where this log has no place for it.
   */
  readonly plant: (log: KeeperLog, random: SeededNumbers) => readonly KeeperRow[] | 'anywhere' | null;
}
