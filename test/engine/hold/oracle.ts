/**
 * The running hold straight from its definition, looking back from the last reading, quadratic and obvious. It shares
 * no code with the engine.
 */
export interface OracleReading {
  readonly when: number;
  readonly level: number;
}

export interface OracleTerms {
  readonly low: number;
  readonly gapHours: number;
  readonly confirm: number;
  readonly asOf?: number;
  readonly arrived?: number;
}

export interface OracleAnswer {
  readonly days: number;
  /** null: no hold runs. */
  readonly start: number | null;
}

export function oracleHold(log: readonly OracleReading[], terms: OracleTerms): OracleAnswer | 'no reading' {
  const second = 1 / 86400;
  const read = log.filter((one) => terms.asOf === undefined || one.when < terms.asOf + second / 2);
  if (read.length === 0) return 'no reading';
  const instants = [...new Set(read.map((one) => one.when))].sort((a, b) => a - b);
  const lowestAt = (when: number): number =>
    Math.min(...read.filter((one) => one.when === when).map((one) => one.level));
  const holds = (when: number): boolean => lowestAt(when) >= terms.low - 1e-9;

  // The stretch that ends at the last test: every instant from which on nothing was below and no gap too long.
  const unbroken = instants.filter((start) => {
    const after = instants.filter((when) => when >= start);
    return (
      after.every(holds) &&
      after.slice(1).every((when, index) => (when - (after[index] ?? 0)) * 24 <= terms.gapHours + 1 / 3600)
    );
  });
  const start = unbroken[terms.confirm - 1];
  if (start === undefined) return { days: 0, start: null };
  const from = Math.max(start, terms.arrived ?? -Infinity);
  const last = Math.max(...instants);
  const credit = Math.min(36, terms.gapHours) / 24;
  const end = terms.asOf === undefined ? last : Math.max(last, Math.min(terms.asOf, last + credit));
  return { days: Math.max(0, end - from), start: from };
}
