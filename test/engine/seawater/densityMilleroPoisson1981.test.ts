import { densityMilleroPoisson1981 } from '../../../src/engine/seawater/densityMilleroPoisson1981.js';
import { celsius68, practicalSalinity } from '../../../src/engine/units/quantity.js';
import { densityCheckValues } from '../published/FofonoffMillard1983.js';
import { eachRow, expectPrinted } from '../published/publishedTable.js';

const density = (s: number, t: number): number => densityMilleroPoisson1981(practicalSalinity(s), celsius68(t));

describe('densityMilleroPoisson1981', () => {
  it('gives the check values of FofonoffMillard1983 to the last printed digit', () => {
    eachRow(densityCheckValues, ([s = NaN, t = NaN], [, , printed = '']) => expectPrinted(density(s, t), printed));
  });

  it('has the density maximum of pure water near 4 °C', () => {
    expect(density(0, 4)).toBeGreaterThan(density(0, 3.5));
    expect(density(0, 4)).toBeGreaterThan(density(0, 4.5));
  });

  it('rises with salinity from 0 to 42 at every temperature from 0 to 40 °C', () => {
    for (let t = 0; t <= 40; t += 1) {
      for (let s = 0; s < 42; s += 0.5) expect(density(s + 0.5, t)).toBeGreaterThan(density(s, t));
    }
  });

  // An independent equation of state, TEOS-10: in-situ density at 0 dbar at the absolute salinity S·35.16504 ÷ 35,
  // computed once with the reference implementation of its authors. Derived, not printed anywhere.
  it.each([
    [35, 5, 1027.6756],
    [35, 25, 1023.34363],
    [35, 15, 1025.97603],
    [35, 30, 1021.72609],
    [5, 20, 1002.0097],
    [20, 20, 1013.36426],
    [42, 40, 1023.15273],
    [0, 5, 999.96665],
    [0, 25, 997.04765],
    [0, 40, 992.21635],
    [30, 10, 1023.05326],
  ])('lies within 0.02 kg/m³ of TEOS-10 at salinity %p, %p °C', (s, t, teos10) => {
    expect(Math.abs(density(s, 1.00024 * t) - teos10)).toBeLessThan(0.02);
  });
});
