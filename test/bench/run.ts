/** `npm run bench`: ratios to a bare pass in the same process, each with its limit; past a limit the exit code is 1. */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { gzipSync } from 'node:zlib';
import { standInHost } from '../host/standInHost.js';
import { benches } from './benches.js';
import { hourly, levels } from './cells.js';
import { medianRatio } from './medianRatio.js';

interface Line {
  readonly what: string;
  readonly measured: string;
  readonly ratio: number;
  readonly limit: number;
}

/** How much more memory is in use after one call than before it, what it left to the collector included. [MB] */
function growth(rows: number): number {
  const host = standInHost();
  host.callBare('HOLDDAYS', hourly(10), levels(10), 'chelated');
  const when = hourly(rows);
  const copper = levels(rows);
  const inUse = (): number => process.memoryUsage().heapUsed + process.memoryUsage().arrayBuffers;
  globalThis.gc?.();
  const before = inUse();
  host.callBare('HOLDDAYS', when, copper, 'chelated');
  return Math.max(0, inUse() - before) / 2 ** 20;
}

/** The same in a process of its own, which no earlier bench has filled. */
function growthApart(rows: number): number {
  const script = process.argv[1] ?? '';
  return Number(execFileSync(process.execPath, ['--expose-gc', script, 'memory', String(rows)], { encoding: 'utf8' }));
}

function lines(rows: number): Line[] {
  const times = benches(standInHost(), rows).map((bench): Line => {
    if (!bench.holds(bench.run())) throw new Error(`${bench.name}: wrong answer`);
    const { milliseconds, baseline, ratio } = medianRatio(bench.run, bench.baseline, 7);
    const measured = `${milliseconds.toFixed(1)} ms against ${baseline.toFixed(1)} ms`;
    return { what: bench.name, measured, ratio, limit: bench.limit };
  });
  const quarter = growthApart(rows / 4);
  const whole = growthApart(rows);
  const memory = `${whole.toFixed(0)} MB against ${quarter.toFixed(0)} MB at a quarter`;
  const size = gzipSync(readFileSync(resolve('dist/functions.js')), { level: 9 }).length;
  return [
    ...times,
    // Linear is 4; the collector's own steps blur small figures, so that 4 MB are added to both.
    { what: 'memory of HOLDDAYS, numbers', measured: memory, ratio: (whole + 4) / (quarter + 4), limit: 4.5 },
    { what: 'bundle', measured: `${size} bytes gzipped`, ratio: size / 60_000, limit: 1 },
  ];
}

if (process.argv[2] === 'memory') {
  process.stdout.write(String(growth(Number(process.argv[3]))));
} else {
  const rows = Number(process.argv[2] ?? 1_000_000);
  process.stdout.write(`${rows} rows; Node ${process.version}; median of 7 runs after a warm-up\n`);
  const table = lines(rows);
  for (const { what, measured, ratio, limit } of table) {
    const verdict = ratio <= limit ? '' : '  PAST THE LIMIT';
    process.stdout.write(
      `${what.padEnd(42)} ${measured.padEnd(34)} ${ratio.toFixed(2).padStart(6)} of ${limit}${verdict}\n`,
    );
  }
  process.exitCode = table.every((line) => line.ratio <= line.limit) ? 0 : 1;
}
