/**
 * `npm run bench`: ratios to a bare pass in the same process, each with its limit; past a limit the exit code is 1. Every
 * line is measured in a process of its own, so that no bench pays for what another left in memory.
 */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { gzipSync } from 'node:zlib';
import { chromium } from '../browser/whereChromium.js';
import { standInHost } from '../host/standInHost.js';
import { benches, holdChance, type Bench } from './benches.js';
import { hourly, levels } from './cells.js';
import { folderBench } from './folderBench.js';
import { logBenches } from './logBenches.js';
import { medianRatio } from './medianRatio.js';
import { pageBench, type PageTimes } from './pageBench.js';

const runs = 9;

interface Line {
  readonly what: string;
  readonly measured: string;
  readonly ratio: number;
  readonly limit: number;
}

function benchLine(bench: Bench): Line {
  const { run, baseline, holds } = bench.prepare();
  if (!holds(run())) throw new Error(`${bench.name}: wrong answer`);
  const own = medianRatio(run, baseline, { runs, ...bench.measuring });
  const measured = `${own.milliseconds.toFixed(1)} ms against ${own.baseline.toFixed(1)} ms`;
  return { what: bench.name, measured, ratio: own.ratio, limit: bench.limit };
}

/** How much more memory is in use after one call than before it, what it left to the collector included. [MB] */
function growth(rows: number): number {
  const host = standInHost();
  const [when, copper] = [hourly(rows), levels(rows)];
  const inUse = (): number => process.memoryUsage().heapUsed + process.memoryUsage().arrayBuffers;
  host.callBare('HOLDDAYS', hourly(10), levels(10), 'chelated');
  globalThis.gc?.();
  const before = inUse();
  host.callBare('HOLDDAYS', when, copper, 'chelated');
  return Math.max(0, inUse() - before) / 2 ** 20;
}

/** The answer of this script to other arguments, from a process of its own. */
function apart<T>(...args: readonly (string | number)[]): T {
  const command = ['--expose-gc', process.argv[1] ?? '', ...args.map(String)];
  return JSON.parse(execFileSync(process.execPath, command, { encoding: 'utf8' }));
}

function memoryLine(rows: number): Line {
  const quarter = apart<number>('memory', rows / 4);
  const whole = apart<number>('memory', rows);
  const measured = `${whole.toFixed(0)} MB against ${quarter.toFixed(0)} MB at a quarter`;
  // Linear is 4; the collector's own steps blur small figures, so that 4 MB are added to both.
  return { what: 'HOLDDAYS, memory', measured, ratio: (whole + 4) / (quarter + 4), limit: 4.5 };
}

function chanceLine(): Line {
  const run = holdChance(standInHost());
  const { milliseconds } = medianRatio(run, run, { runs });
  const measured = `${milliseconds.toFixed(1)} ms against 50 ms`;
  return { what: 'HOLDCHANCE, 200 readings', measured, ratio: milliseconds / 50, limit: 1 };
}

/** The first plot of 20,000 rows after their load, against the load itself; and it is there within two seconds. */
function pageLine(rows: number): Line {
  const { load, plot } = apart<PageTimes>('page', rows);
  const measured = `${plot.toFixed(0)} ms (of 2000) against ${load.toFixed(0)} ms`;
  return {
    what: `page, first plot of ${rows} rows`,
    measured,
    ratio: plot > 2000 ? Infinity : plot / load,
    limit: 1,
  };
}

function sizeLine(): Line {
  const size = gzipSync(readFileSync(resolve('dist/functions.js')), { level: 9 }).length;
  return { what: 'bundle', measured: `${size} bytes gzipped`, ratio: size / 150_000, limit: 1 };
}

function report(rows: number): void {
  process.stdout.write(`${rows} rows; Node ${process.version}; median of ${runs} runs or more after a warm-up\n`);
  const measures = allBenches(rows).map((_, i) => () => apart<Line>('bench', rows, i));
  const inPage = chromium === undefined ? [] : [() => pageLine(Math.ceil(rows / 50))];
  if (chromium === undefined) process.stdout.write('the page is not measured: no Chromium on this machine\n');
  for (const measure of [...measures, () => memoryLine(rows), chanceLine, ...inPage, sizeLine]) {
    const { what, measured, ratio, limit } = measure();
    const past = ratio <= limit ? '' : '  PAST THE LIMIT';
    process.stdout.write(
      `${what.padEnd(40)} ${measured.padEnd(34)} ${ratio.toFixed(2).padStart(7)} of ${limit}${past}\n`,
    );
    if (past !== '') process.exitCode = 1;
  }
}

/** The log benches take a tenth of the rows: a shop's 100,000, a keeper's 10,000; the folder holds 200 workbooks. */
function allBenches(rows: number): Bench[] {
  const host = standInHost();
  return [...benches(host, rows), ...logBenches(host, Math.ceil(rows / 10)), folderBench(Math.ceil(rows / 5000))];
}

const [, , task, rows = '1000000', index = '0'] = process.argv;
if (task === 'page') void pageBench(Number(rows)).then((times) => process.stdout.write(JSON.stringify(times)));
else if (task === 'memory') process.stdout.write(JSON.stringify(growth(Number(rows))));
else if (task === 'bench') {
  const bench = allBenches(Number(rows))[Number(index)];
  if (bench === undefined) throw new Error(`no bench ${index}`);
  process.stdout.write(JSON.stringify(benchLine(bench)));
} else report(Number(task ?? rows));
