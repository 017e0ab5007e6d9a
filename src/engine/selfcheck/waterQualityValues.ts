import { ammoniaFromNitrogen } from '../ammonia/ammoniaFromNitrogen.js';
import { pkaBowerBidwell1978 } from '../ammonia/pkaBowerBidwell1978.js';
import { pkaEmersonEtAl1975 } from '../ammonia/pkaEmersonEtAl1975.js';
import { pkaEpa1989 } from '../ammonia/pkaEpa1989.js';
import { type PkaOfAmmonium, unionisedFraction } from '../ammonia/unionisedFraction.js';
import { densityMilleroPoisson1981 } from '../seawater/densityMilleroPoisson1981.js';
import { specificGravityOfSeawater } from '../seawater/specificGravityOfSeawater.js';
import { ammoniaNitrogenMgPerLitre, celsius, celsius68, phNbs, practicalSalinity } from '../units/quantity.js';
import { leastSquaresLine } from '../water/leastSquaresLine.js';
import { studentHalfWidth } from '../water/studentHalfWidth.js';
import { answerOrNull, type PublishedValue } from './publishedValue.js';
import { norrisPoints } from './norrisPoints.js';

/** Ammonia, density and specific gravity, and the straight line behind the loss rate. */
export const waterQualityValues: readonly PublishedValue[] = [
  unionised('0.459', 7.5, 10),
  unionised('0.665', 7.5, 15),
  unionised('0.963', 7.5, 20),
  unionised('1.39', 7.5, 25),
  unionised('0.726', 7.7, 10),
  unionised('1.05', 7.7, 15),
  unionised('1.52', 7.7, 20),
  unionised('2.19', 7.7, 25),
  unionised('0.912', 7.8, 10),
  unionised('1.32', 7.8, 15),
  unionised('1.90', 7.8, 20),
  unionised('2.74', 7.8, 25),
  unionised('1.44', 8.0, 10),
  unionised('2.07', 8.0, 15),
  unionised('2.98', 8.0, 20),
  unionised('4.28', 8.0, 25),
  unionised('2.26', 8.2, 10),
  unionised('3.25', 8.2, 15),
  unionised('4.65', 8.2, 20),
  unionised('6.61', 8.2, 25),
  unionised('4.41', 8.5, 10),
  unionised('6.28', 8.5, 15),
  unionised('8.87', 8.5, 20),
  unionised('12.40', 8.5, 25),
  rival('the formula of US EPA (1989)', '6', pkaEpa1989, { key: 'EPA1989', at: 'pKa' }),
  rival('the fresh-water formula of Emerson et al. (1975)', '25', pkaEmersonEtAl1975, {
    key: 'EmersonEtAl1975',
    at: 'pKa',
  }),
  acute('31', 0),
  acute('21', 5),
  acute('15', 10),
  acute('10', 15),
  acute('7.2', 20, ' (printed 7.5, a misprint)'),
  acute('5.0', 25),
  acute('3.5', 30),
  acute('2.5', 35),
  {
    check: 'NH3 for each mg of N, mg',
    printed: '1.21589',
    computed: () => ammoniaFromNitrogen(ammoniaNitrogenMgPerLitre(1)),
    source: { key: 'CIAAW', at: 'N and H', status: 'derived' },
  },
  density('999.96675', 0),
  density('1027.67547', 35),
  gravity('1.02637', 25, 25, '25/25 °C'),
  gravity('1.02660', 20, 20, '20/20 °C'),
  gravity('1.02435', 25, 140 / 9, '25 °C over 60 °F'),
  line('slope', '1.00211682', ({ slope }) => slope),
  line('standard deviation of the slope', '0.000429796848', ({ slopeDeviation }) => slopeDeviation),
  line('intercept', '-0.262323074', ({ intercept }) => intercept),
  line('residual sum of squares', '26.6173985', ({ residualSquares }) => residualSquares),
  line('R²', '0.999993746', ({ residualSquares, totalSquares }) => 1 - residualSquares / totalSquares),
  interval('lower', '1.0012433657', -1),
  interval('upper', '1.0029902703', 1),
];

function percentNh3(pka: PkaOfAmmonium, pH: number, temperature: number, salinity: number): number {
  const water = { temperature: celsius(temperature), salinity: practicalSalinity(salinity) };
  return 100 * unionisedFraction(phNbs(pH), pka(water));
}

function unionised(printed: string, pH: number, temperature: number): PublishedValue {
  return {
    check: `NH3 of total ammonia at pH ${pH.toFixed(1)}, ${temperature} °C, salinity 34, % (within 2 %)`,
    printed,
    within: 0.02,
    computed: () => percentNh3(pkaBowerBidwell1978, pH, temperature, 34),
    source: { key: 'BowerBidwell1978', at: '% NH3 at salinity 34' },
  };
}

/** By how much another formula departs from the table's 4.28 % at pH 8.0, 25 °C, salinity 34. */
function rival(name: string, printed: string, pka: PkaOfAmmonium, source: PublishedValue['source']): PublishedValue {
  return {
    check: `NH3 by ${name} above the table, pH 8.0, 25 °C, salinity 34, %`,
    printed,
    computed: () => 100 * (percentNh3(pka, 8, 25, 34) / 4.28 - 1),
    source: { ...source, status: 'derived' },
  };
}

function acute(printed: string, temperature: number, remark = ''): PublishedValue {
  return {
    check: `total ammonia holding 0.233 mg/L NH3 at salinity 30, pH 8.0, ${temperature} °C, mg/L${remark}`,
    printed,
    computed: () => 23.3 / percentNh3(pkaEpa1989, 8, temperature, 30),
    source: { key: 'EPA1989', at: 'table of total ammonia, salinity 30, pH 8.0' },
  };
}

function density(printed: string, salinity: number): PublishedValue {
  return {
    check: `density at salinity ${salinity}, 5 °C, kg/m³`,
    printed,
    computed: () => densityMilleroPoisson1981(practicalSalinity(salinity), celsius68(5)),
    source: { key: 'FofonoffMillard1983', at: 'check value' },
  };
}

function gravity(printed: string, temperature: number, reference: number, scale: string): PublishedValue {
  const water = { salinity: practicalSalinity(35), temperature: celsius(temperature), reference: celsius(reference) };
  return {
    check: `specific gravity of salinity 35, ${scale}`,
    printed,
    computed: () => answerOrNull(specificGravityOfSeawater(water)),
    source: { key: 'FofonoffMillard1983', at: 'density', status: 'derived' },
  };
}

type Line = ReturnType<typeof leastSquaresLine>;

function line(name: string, printed: string, of: (line: Line) => number): PublishedValue {
  return {
    check: `least squares: ${name}`,
    printed,
    computed: () => of(leastSquaresLine(norrisPoints.x, norrisPoints.y)),
    source: { key: 'NistNorris', at: 'certified, to nine digits' },
  };
}

function interval(end: string, printed: string, sign: number): PublishedValue {
  const bound = ({ slope, slopeDeviation, freedom }: Line): number =>
    slope + sign * studentHalfWidth(0.95, freedom) * slopeDeviation;
  return {
    ...line(`${end} end of the slope's 95 % interval`, printed, bound),
    source: { key: 'NistNorris', at: 'slope and its deviation', status: 'derived' },
  };
}
