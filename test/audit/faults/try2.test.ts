import { plantedLog, faultKinds } from './auditFigures.js';
import { writtenLog } from './writtenLog.js';
import { seededNumbers } from '../../../src/level/seededNumbers.js';
import { auditOf } from './auditOf.js';
it('x', () => {
  const out: string[] = [];
  for (const [n, s] of [['a reading ten', 2723954], ['ug/L', 4925263], ['a lost', 12991396]] as const) {
    const { log, seed, at } = plantedLog(faultKinds.find((k) => k.name.startsWith(n))!, s);
    const w = writtenLog(log, seededNumbers(seed + 1));
    const i = log.rows.indexOf(at[0] as never);
    out.push(JSON.stringify([...log.card]), JSON.stringify(log.treatment.meter), ...log.rows.slice(Math.max(0, i - 8), i + 12).map((r) => `${w.rowOf.get(r)} ${JSON.stringify(r)}`), ...auditOf(w).filter((f) => f.severity !== 'verdict').map((f) => JSON.stringify(f)));
  }
  require('fs').writeFileSync('/tmp/r2x.txt', out.join('\n'));
});
