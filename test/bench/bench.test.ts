import { standInHost } from '../host/standInHost.js';
import { benches } from './benches.js';
import { medianRatio } from './medianRatio.js';

describe('the benchmarks', () => {
  it.each(benches(standInHost(), 200).map((bench) => [bench.name, bench] as const))(
    '%s runs and is right',
    (_, bench) => {
      expect(bench.holds(bench.run())).toBe(true);
      expect(bench.holds('')).toBe(false);
      expect(medianRatio(bench.run, bench.baseline, 1).ratio).toBeGreaterThan(0);
    },
  );
});
