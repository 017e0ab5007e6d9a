import { standInHost } from '../host/standInHost.js';
import { folderBench } from './folderBench.js';
import { logBenches } from './logBenches.js';
import { benches, holdChance } from './benches.js';
import { medianRatio } from './medianRatio.js';

const host = standInHost();
const every = [...benches(host, 200), ...logBenches(host, 1000), folderBench(3)];

describe('the benchmarks', () => {
  it.each(every.map((bench) => [bench.name, bench] as const))('%s runs and is right', (_, bench) => {
    const { run, baseline, holds } = bench.prepare();
    expect(holds(run())).toBe(true);
    expect(holds('')).toBe(false);
    expect(medianRatio(run, baseline, { runs: 1 }).ratio).toBeGreaterThan(0);
  });

  it('HOLDCHANCE, 200 readings runs', () => {
    expect(holdChance(standInHost())()).toBeGreaterThan(0);
  });
});
