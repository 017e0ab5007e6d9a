/**
 * Milliseconds of one call: by the clock, or by the processor where other work of the machine held the call up and that
 * is the smaller figure.
 */
function time(run: () => unknown): number {
  const cpu = process.cpuUsage();
  const start = performance.now();
  run();
  const byClock = performance.now() - start;
  const { user, system } = process.cpuUsage(cpu);
  return Math.min(byClock, (user + system) / 1000);
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[sorted.length >> 1] ?? Number.NaN;
}

export interface Measured {
  readonly milliseconds: number;
  readonly baseline: number;
  readonly ratio: number;
}

export interface Measuring {
  readonly runs: number;
  /** Calls of each before the clock runs. */
  readonly warmUps?: number;
  /**
   * Whether the collector runs before each call, so that none pays for another's garbage. A whole collection also throws
   * away compiled code, which then costs more than a call that takes a few milliseconds: without it each call pays for
   * the garbage of all.
   */
  readonly collects?: boolean;
}

/** Both run in turn in one process, after a warm-up. */
export function medianRatio(
  run: () => unknown,
  baseline: () => unknown,
  { runs, warmUps = 3, collects = true }: Measuring,
): Measured {
  for (let i = 0; i < warmUps; i++) {
    run();
    baseline();
  }
  const own: number[] = [];
  const bare: number[] = [];
  for (let i = 0; i < runs; i++) {
    if (collects) globalThis.gc?.();
    bare.push(time(baseline));
    own.push(time(run));
  }
  return { milliseconds: median(own), baseline: median(bare), ratio: median(own) / median(bare) };
}
