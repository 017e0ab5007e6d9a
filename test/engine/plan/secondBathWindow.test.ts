import { secondBathWindow } from '../../../src/engine/plan/secondBathWindow.js';
import { flukeLifeAt25 } from '../published/BondadReantasoEtAl1995.js';

/** First and last of a printed span of days. */
const span = (printed: string | undefined): number[] => (printed ?? '').split('-').map(Number);

describe('secondBathWindow', () => {
  it('lies after the usual hatching and before the first new eggs', () => {
    const [hatching = [], maturity = []] = flukeLifeAt25.rows.map(([, printed]) => span(printed));
    const { from, until } = secondBathWindow();
    expect(from).toBe(Math.max(...hatching) + 1);
    expect(until).toBe(Math.min(...hatching) + Math.min(...maturity));
    expect([from, until]).toEqual([7, 15]);
  });
});
