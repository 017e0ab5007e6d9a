import { nextCleanLog } from './cleanLog.js';
import { writtenLog } from './writtenLog.js';
import { seededNumbers } from '../../../src/level/seededNumbers.js';
import { auditOf } from './auditOf.js';
import { readingOf, isTested, type KeeperLog } from './keeperLog.js';
const variants: Record<string, (l: KeeperLog, seed: number) => void> = {
  plain: () => undefined,
  merged: (l) => {
    const rows = l.rows;
    for (let i = 0; i + 1 < rows.length; i++) {
      const a = rows[i]!, b = rows[i + 1]!;
      if (a.copper !== undefined && a.dose === undefined && b.dose !== undefined && b.copper === undefined && b.when - a.when < 0.1) { a.dose = b.dose; rows.splice(i + 1, 1); }
    }
  },
  noAccuracy: (l) => void l.card.delete('meter accuracy'),
  understated: (l) => { l.card.set('meter accuracy', Number(l.card.get('meter accuracy')) / 1.6); },
  volume5: (l) => { l.card.set('volume', `${l.treatment.volume * 1.05} L`); },
  volume12: (l) => { l.card.set('volume', `${l.treatment.volume * 0.88} L`); },
  noTopOffs: (l) => { for (const r of l.rows) delete r.topOff; },
  oneTest: (l) => { const keep = l.rows.filter((r) => !(isTested(r) && r.when < l.holdFrom && Math.abs(((r.when - l.treatment.start + 0.5) % 1) - 0.5) > 0.3)); l.rows.splice(0, l.rows.length, ...keep); },
  outlierNoise: (l, s) => { const q = seededNumbers(s + 5); for (const r of l.rows) if (isTested(r) && q.uniform() < 0.03) r.copper = readingOf(Math.min(l.high, Math.max(r.when >= l.holdFrom ? l.low : 0, r.copper + (q.uniform() - 0.5) * 4 * l.treatment.meter.accuracy))); },
  noDoses: (l) => { for (const r of l.rows) { delete r.dose; } },
  dateOnly: (l) => { for (const r of l.rows) r.when = Math.floor(r.when); },
  readingsOnly: (l) => { const keep = l.rows.filter(isTested).map((r) => ({ when: r.when, copper: r.copper })); l.rows.splice(0, l.rows.length, ...keep); },
  band: (l) => { l.card.set('form', `${l.low} - ${l.high}`); },
  jitter: (l, s) => { const q = seededNumbers(s); for (const r of l.rows) if (r.dose !== undefined && r.when < l.holdFrom) r.when += (q.uniform() - 0.5) * 0.02; l.rows.sort((a, b) => a.when - b.when); },
};
it('x', () => {
  const out: string[] = [];
  for (const [name, vary] of Object.entries(variants)) {
    let bad = 0; const codes: Record<string, number> = {}; let ex = '';
    for (let i = 0; i < 300; i++) {
      const { log } = nextCleanLog(i * 31 + 5);
      vary(log, i);
      let w = writtenLog(log, seededNumbers(i)); if (name === 'dateOnly') { let k = i; while (!(w.range.some((r) => typeof r[0] === 'number' || /^\d{4}-\d\d-\d\d$/.test(String(r[0]))) && ['Date', 'When', 'Date and time'].includes(String(w.range.find((r) => r.length > 1 && r[1] !== null)![0])) && !/Time/.test(String(w.range.find((r) => r.length > 1 && r[1] !== null)![1])) && w.rowOf.get(log.rows[0]!)! < 10)) { k += 1000; w = writtenLog(log, seededNumbers(k)); } }
      const f = auditOf(w).filter((x) => x.severity === 'danger' || x.severity === 'warning');
      if (f.length) { bad++; ex ||= log.form + JSON.stringify(f[0]); }
      for (const c of new Set(f.map((x) => x.severity + ' ' + x.code))) codes[c] = (codes[c] ?? 0) + 1;
    }
    out.push(`${name} ${bad}/300 ${JSON.stringify(codes)} ${ex}`);
  }
  require('fs').writeFileSync('/tmp/r2x.txt', out.join('\n'));
}, 100000);
