import { cleanLog } from './cleanLog.js';
import { writtenLog } from './writtenLog.js';
import { seededNumbers } from '../../../src/level/seededNumbers.js';
import { auditRules } from '../../../src/audit/auditRules.js';
import { cardCells, cardEntries } from '../../../src/log/cardRead/cardEntries.js';
import { readCard } from '../../../src/log/cardRead/readCard.js';
import { readLog } from '../../../src/log/table/readLog.js';
import { treatmentOf } from '../../../src/rules/treatmentOf.js';
it('x', () => {
  let s = 1; let log = cleanLog(s); while (!log || log.form !== 'chelated' || !log.treatment.topOffPerDay || !log.treatment.change) log = cleanLog(++s);
  const rows = []; const span = 60; 
  for (let k = 0; rows.length < 10000; k++) for (const r of log.rows) rows.push({ ...r, when: r.when + k * span, copper: process.env.DIRTY && r.copper !== undefined && rows.length % 37 === 0 ? Number(r.copper) * 10 : r.copper });
  log.rows.splice(0, log.rows.length, ...(rows as never[]));
  const w = writtenLog(log, seededNumbers(Number(process.env.STYLE ?? 3)));
  const c = (x: unknown) => (x === undefined ? null : x) as never;
  const e = cardEntries(w.card, c); if (!e.ok) throw 1;
  const r = readCard(cardCells(e.value)); if (!r.ok) throw 2;
  const total: Record<string, number> = {};
  const timed = (n: string, f: () => unknown) => { const t = performance.now(); const v = f(); (total[n] = Math.min(total[n] ?? 1e9, performance.now() - t)); return v; };
  for (let i = 0; i < 15; i++) {
    let cells = 0;
    timed('typeof', () => { for (const row of w.range) for (const cell of row) if (typeof cell === 'number') cells++; return cells; });
    const l = timed('read', () => readLog({ log: { range: w.range, cellOf: c }, gallon: 'US', needs: ['time'] })) as never as { value: never };
    const t = treatmentOf(l.value, r.value, undefined);
    timed('levels', () => t.levels); timed('signs', () => t.signs);
    const named = new Set<number>();
    let sum = 0; const t0 = performance.now();
    for (const rule of auditRules) timed((rule as { name: string }).name, () => { for (const f of rule(t, named)) if (f.row !== null) named.add(f.row); });
    sum = performance.now() - t0; total['all rules'] = Math.min(total['all rules'] ?? 1e9, sum);
  }
  console.log(w.range.length, JSON.stringify(total, (k, v) => typeof v === 'number' ? +v.toFixed(2) : v, 1));
}, 100000);
