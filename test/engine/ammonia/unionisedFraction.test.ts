import { pkaBellEtAl2007 } from '../../../src/engine/ammonia/pkaBellEtAl2007.js';
import { pkaBowerBidwell1978 } from '../../../src/engine/ammonia/pkaBowerBidwell1978.js';
import { pkaEmersonEtAl1975 } from '../../../src/engine/ammonia/pkaEmersonEtAl1975.js';
import { pkaEpa1989 } from '../../../src/engine/ammonia/pkaEpa1989.js';
import { type PkaOfAmmonium, unionisedFraction } from '../../../src/engine/ammonia/unionisedFraction.js';
import { ionicStrengthOfSeawater } from '../../../src/engine/seawater/ionicStrengthOfSeawater.js';
import { ammoniumPka, celsius, phNbs, practicalSalinity } from '../../../src/engine/units/quantity.js';
import {
  unionisedPercent,
  unionisedPercentSalinity,
  unionisedPercentTemperatures,
} from '../published/BowerBidwell1978.js';
import {
  acuteCriterion,
  acuteTotalAmmonia,
  acuteTotalAmmoniaPh,
  acuteTotalAmmoniaSalinity,
} from '../published/EPA1989.js';
import { eachRow } from '../published/publishedTable.js';

function percent(pka: PkaOfAmmonium, pH: number, temperature: number, salinity: number): number {
  return (
    100 *
    unionisedFraction(phNbs(pH), pka({ temperature: celsius(temperature), salinity: practicalSalinity(salinity) }))
  );
}

/** Least and greatest departure from the printed table, as a part of the printed value. */
function departures(pka: PkaOfAmmonium): { least: number; greatest: number; cells: number } {
  const parts: number[] = [];
  eachRow(unionisedPercent, ([pH = NaN, ...printed]) =>
    printed.forEach((cell, i) => {
      parts.push(percent(pka, pH, unionisedPercentTemperatures[i] ?? NaN, unionisedPercentSalinity) / cell - 1);
    }),
  );
  return { least: Math.min(...parts), greatest: Math.max(...parts), cells: parts.length };
}

describe('ionicStrengthOfSeawater', () => {
  it('is the 0.701 molal that BowerBidwell1978 states for salinity 34', () => {
    // Stated to three places, cut rather than rounded: the formula gives 0.7015.
    expect(Math.abs(ionicStrengthOfSeawater(practicalSalinity(34)) - 0.701)).toBeLessThan(0.001);
  });
});

describe('unionisedFraction', () => {
  it('is a half where pH equals pKa', () => {
    expect(unionisedFraction(phNbs(9.3), ammoniumPka(9.3))).toBe(0.5);
  });

  it('lies within 2 % of every printed cell of BowerBidwell1978', () => {
    const { least, greatest, cells } = departures(pkaBowerBidwell1978);
    expect(cells).toBe(44);
    expect(least).toBeGreaterThan(-0.02);
    expect(greatest).toBeLessThan(0.02);
  });

  it('falls with salinity and rises with temperature and pH', () => {
    const at = (pH: number, t: number, s: number): number => percent(pkaBowerBidwell1978, pH, t, s);
    for (let t = 5; t <= 35; t += 5) {
      expect(at(8, t, 35)).toBeLessThan(at(8, t, 5));
      expect(at(8.1, t, 34)).toBeGreaterThan(at(8, t, 34));
      if (t > 5) expect(at(8, t, 34)).toBeGreaterThan(at(8, t - 5, 34));
    }
  });
});

describe('the rivals', () => {
  it('EPA1989 gives about 6 % more than the table', () => {
    const { least, greatest } = departures(pkaEpa1989);
    expect(least).toBeGreaterThan(0.055);
    expect(greatest).toBeLessThan(0.07);
  });

  it('EPA1989 gives its own table of total ammonia, but for the misprint at 20 °C', () => {
    eachRow(acuteTotalAmmonia, ([t = NaN], [, printed = '']) => {
      const fraction = percent(pkaEpa1989, acuteTotalAmmoniaPh, t, acuteTotalAmmoniaSalinity) / 100;
      const row = acuteTotalAmmonia.rows.findIndex(([temperature]) => Number(temperature) === t);
      const misprint = acuteTotalAmmonia.misprints.find((one) => one.row === row);
      expect((acuteCriterion / fraction).toPrecision(2)).toBe(misprint?.shouldBe ?? printed);
      if (misprint !== undefined) expect(misprint.printed).toBe(printed);
    });
  });

  it('BellEtAl2007 lies within 2 % of the table too', () => {
    const { least, greatest } = departures(pkaBellEtAl2007);
    expect(least).toBeGreaterThan(-0.02);
    expect(greatest).toBeLessThan(0.02);
  });

  it('EmersonEtAl1975, for fresh water, overstates sea water by about 25 %', () => {
    const { least, greatest } = departures(pkaEmersonEtAl1975);
    expect(least).toBeGreaterThan(0.22);
    expect(greatest).toBeLessThan(0.29);
  });
});
