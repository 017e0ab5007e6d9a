import { steadyPass } from '../../../src/rules/steady/steadyPass.js';
it('x', () => {
  const n = 15000; const c = (f: (i: number) => number) => Float64Array.from({ length: n }, (_, i) => f(i));
  const steps = { count: n, elapsed: c(() => 0.3), share: c(() => 1), added: c(() => 0), thickBefore: c(() => 1), thickAfter: c(() => 1), volume: c(() => 200), read: c((i) => i % 3 ? NaN : 2.2 + (i % 7) * 0.01), noise: c((i) => i % 3 ? NaN : 6e-4), readings: n / 3, evaporation: { rate: 0, most: 0, missing: 0 } };
  let best = 1e9, best2 = 1e9;
  for (let k = 0; k < 30; k++) { let t = performance.now(); steadyPass({ steps, course: { rate: 0.01, drift: 0.02 }, scale: 1, count: n }); best = Math.min(best, performance.now() - t);
   t = performance.now(); for (let j = 0; j < 20; j++) steadyPass({ steps, course: { rate: 0.01, drift: 0.02 }, scale: 1, count: 800 }); best2 = Math.min(best2, performance.now() - t); }
  console.log(best, best2);
});
