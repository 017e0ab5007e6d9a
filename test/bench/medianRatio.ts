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

/** Both run in turn in one process, after a warm-up. */
export function medianRatio(run: () => unknown, baseline: () => unknown, runs: number): Measured {
  for (let i = 0; i < 3; i++) {
    run();
    baseline();
  }
  const own: number[] = [];
  const bare: number[] = [];
  for (let i = 0; i < runs; i++) {
    globalThis.gc?.();
    bare.push(time(baseline));
    own.push(time(run));
  }
  return { milliseconds: median(own), baseline: median(bare), ratio: median(own) / median(bare) };
}
