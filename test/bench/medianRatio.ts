/** Milliseconds of processor time of one call, which other work of the machine does not lengthen. */
function time(run: () => unknown): number {
  const start = process.cpuUsage();
  run();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000;
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
