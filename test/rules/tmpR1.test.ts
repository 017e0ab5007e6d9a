import { writeFileSync } from 'node:fs';
import { readLog } from '../../src/log/table/readLog.js';
import { auditRules } from '../../src/audit/auditRules.js';
import { auditFindings } from '../../src/audit/auditFindings.js';
import { treatmentOf } from '../../src/rules/treatmentOf.js';
import { treatmentFrom } from './treatmentFrom.js';
import type { Cell } from '../../src/units/cell.js';
const cellOf = (raw: unknown): Cell => (raw === undefined ? null : (raw as Cell));
it('speed', () => {
  const out: string[] = [];
  for (const variant of ['plain', 'breaks', 'faults', 'above', 'notes']) {
  const card = treatmentFrom('Date | Copper\n2026-03-01 08:00 | 2', 'volume | 300 L\nform | chelated\nstrength | 10\nmeter accuracy | 0.05').card;
  const range: unknown[][] = [['Date', 'Copper', 'Dose mL', 'Change L', 'Fish in', 'Hold day', 'Signs', 'Notes']];
  for (let i = 0; i < 10000; i++) range.push([46000.3 + i / 4,
     variant === 'breaks' && i % 4 === 3 ? 1.8 : variant === 'faults' && i % 4 === 3 ? 'LOW' : variant === 'above' ? 2.7 + (i % 3) / 10 : 2.2 + (i % 7) / 100, i % 20 === 0 ? 2 : null, i % 30 === 5 ? 20 : null, null, Math.floor(i / 4) + 1, i % 3 === 0 ? 'eating well' : null, variant === 'notes' ? 'fed twice, fish looked fine, wiped the glass' : null]);
  const log = readLog({ log: { range, cellOf }, gallon: 'US', needs: ['time', 'copper'] });
  if (!log.ok) throw new Error('x');
  const times = new Map<string, number>();
  let total = 0;
  for (let k = 0; k < 6; k++) {
    const t = treatmentOf(log.value, card, undefined);
    const named = new Set<number>();
    const s = performance.now(); auditFindings(t); total = performance.now() - s;
    const t2 = treatmentOf(log.value, card, undefined);
    for (const rule of auditRules) { const a = performance.now(); const f = rule(t2, named); times.set(rule.name, performance.now() - a); f.forEach((x) => x.row !== null && x.severity !== 'verdict' && x.severity !== 'note' && x.code !== 'unexplained-reading' && named.add(x.row)); }
  }
  out.push(variant + ' total ' + total.toFixed(2) + ' ' + [...times].filter(([, v]) => v > 0.15).map(([n, v]) => `${n} ${v.toFixed(2)}`).join(', '));
  }
  writeFileSync('/tmp/r1speed.txt', out.join('\n'));
}, 100000);
