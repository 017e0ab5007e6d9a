/**
 * `npm run audit-figures`: how many planted faults the audit names at their row, kind by kind, and how many logs without
 * a fault it says something grave of. Short of the goals the exit code is 1. Two numbers may follow: logs a kind, and
 * logs without a fault.
 */
import { faultlessFigures, faultKinds, figuresOf, goals, type KindFigures, type Missed } from './auditFigures.js';

const [, , perKind = '50', faultless = '500'] = process.argv;

function say(line: string): void {
  process.stdout.write(`${line}\n`);
}

function missedLine({ seed, form, rows, found }: Missed): string {
  const at = rows === 'anywhere' ? 'anywhere' : `at ${rows.join(', ')}`;
  return `    missed: seed ${seed}, ${form}, ${at}; found ${found.join('; ') || 'nothing'}`;
}

function sayKind({ name, planted, named, missed }: KindFigures): void {
  say(`${name.padEnd(46)} ${String(planted).padStart(5)} ${String(named).padStart(5)}`);
  for (const each of missed) say(missedLine(each));
}

say(`${'kind of fault'.padEnd(46)} logs  named`);
const figures = faultKinds.map((kind, index) => {
  const of = figuresOf(kind, Number(perKind), 1000 * (index + 1));
  sayKind(of);
  return of;
});
const planted = figures.reduce((sum, of) => sum + of.planted, 0);
const named = figures.reduce((sum, of) => sum + of.named, 0);
const share = (100 * named) / planted;
say(`${figures.length} kinds, ${planted} logs: ${share.toFixed(1)} % named at their row`);

const without = faultlessFigures(Number(faultless), 1);
const raised = (100 * without.raised) / without.logs;
say(`${without.logs} logs without a fault: ${raised.toFixed(1)} % with a danger or warning`);
for (const [code, logs] of without.byCode) say(`    ${code}: ${logs}`);
say(`    ${without.leftBand} simulated tanks that left their band were not among them`);
if (share < goals.namedPercent || raised > goals.falsePercent) process.exitCode = 1;
