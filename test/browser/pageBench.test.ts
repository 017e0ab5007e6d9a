import { pageBench } from '../bench/pageBench.js';
import { whereChromium } from './whereChromium.js';

whereChromium('the benchmark of the page', () => {
  it('measures load and plot', async () => {
    const { load, plot } = await pageBench(50);
    expect(load).toBeGreaterThan(0);
    expect(plot).toBeGreaterThan(0);
  }, 60_000);
});
