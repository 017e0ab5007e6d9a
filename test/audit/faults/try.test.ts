import { cleanFigures, faultKinds, figuresOf } from './auditFigures.js';
it('tries', () => {
  const n = Number(process.env.N ?? 50);
  const only = process.env.KIND;
  const out: string[] = [];
  for (const [i, kind] of faultKinds.entries()) {
    if (only && !kind.name.includes(only)) continue;
    const f = figuresOf(kind, n, 1000 * (i + 1));
    out.push(`${f.name.padEnd(44)} ${f.named}/${f.planted}`);
    for (const m of f.missed.slice(0, Number(process.env.SHOW ?? 3))) out.push('      ' + JSON.stringify(m));
  }
  if (!only) out.push(JSON.stringify(cleanFigures(n * 4, 1), (k, v) => (v instanceof Map ? [...v] : v)));
  require('fs').writeFileSync('/tmp/r2out.txt', out.join('\n'));
}, 600000);
