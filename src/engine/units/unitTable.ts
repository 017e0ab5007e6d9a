/** The closed table of units. Each converter takes a number in its unit to the unit the engine works in. */
export interface Dimension {
  /** The unit of a bare number. */
  readonly unit: string;
  /** The units a text may name, as a message lists them. */
  readonly known: string;
  readonly convert: ReadonlyMap<string, (x: number) => number>;
}

type Factors = Readonly<Record<string, number>>;

// NIST Handbook 44, appendix C: the US gallon is 231 cubic inches of 2.54 cm each, exactly; UK Weights and Measures Act 1985: the imperial gallon.
const litresPer: Factors = {
  l: 1,
  litre: 1,
  litres: 1,
  liter: 1,
  liters: 1,
  ltr: 1,
  ml: 1e-3,
  cc: 1e-3,
  millilitre: 1e-3,
  millilitres: 1e-3,
  milliliter: 1e-3,
  milliliters: 1e-3,
  gal: 3.785411784,
  gallon: 3.785411784,
  gallons: 3.785411784,
  usgal: 3.785411784,
  usgallon: 3.785411784,
  usgallons: 3.785411784,
  galus: 3.785411784,
  gallonus: 3.785411784,
  gallonsus: 3.785411784,
  impgal: 4.54609,
  imperialgal: 4.54609,
  impgallon: 4.54609,
  impgallons: 4.54609,
  imperialgallon: 4.54609,
  imperialgallons: 4.54609,
  tsp: 3.785411784 / 768,
  tbsp: 3.785411784 / 256,
  floz: 3.785411784 / 128,
};
const centimetresPer: Factors = {
  cm: 1,
  mm: 0.1,
  m: 100,
  in: 2.54,
  inch: 2.54,
  inches: 2.54,
  ft: 30.48,
  foot: 30.48,
  feet: 30.48,
};
const milligramsPerLitrePer: Factors = { 'mg/l': 1, ppm: 1, 'ug/l': 1e-3, ppb: 1e-3 };
const milligramsPerMlPer: Factors = { 'mg/ml': 1, 'g/l': 1 };
const salinityPer: Factors = { 'g/kg': 1, ppt: 1, psu: 1 };
const hoursPer: Factors = { h: 1, hr: 1, hrs: 1, hour: 1, hours: 1, d: 24, day: 24, days: 24 };
const gramsPer: Factors = { g: 1, gram: 1, grams: 1, mg: 1e-3, kg: 1e3 };

const volumes = 'L mL gal, imp gal, cc tsp tbsp fl oz';

export const dimensions = {
  litres: { unit: 'L', known: volumes, convert: scaled(litresPer, 1) },
  millilitres: { unit: 'mL', known: volumes, convert: scaled(litresPer, 1e3) },
  centimetres: { unit: 'cm', known: 'cm mm m in ft', convert: scaled(centimetresPer, 1) },
  level: { unit: 'mg/L', known: 'mg/L ug/L ppm ppb', convert: scaled(milligramsPerLitrePer, 1) },
  strength: { unit: 'mg/mL', known: 'mg/mL g/L', convert: scaled(milligramsPerMlPer, 1) },
  salinity: { unit: 'g/kg', known: 'g/kg ppt psu', convert: scaled(salinityPer, 1) },
  hours: { unit: 'h', known: 'h, days', convert: scaled(hoursPer, 1) },
  days: { unit: 'days', known: 'days, h', convert: scaled(hoursPer, 1 / 24) },
  grams: { unit: 'g', known: 'mg g kg', convert: scaled(gramsPer, 1) },
  celsius: {
    unit: '°C',
    known: 'C F',
    convert: new Map([
      ['c', (x: number) => x],
      ['f', (x: number) => (x - 32) / 1.8],
    ]),
  },
  plain: { unit: '', known: 'none: a bare number', convert: new Map<string, (x: number) => number>() },
} as const satisfies Record<string, Dimension>;

export type DimensionName = keyof typeof dimensions;

/** The unit as the table spells it: case, spaces, dots, degree signs and the three ways to write micro do not matter. */
export function unitKey(text: string): string {
  const key = text
    .toLowerCase()
    .replace(/[µμ]/g, 'u')
    .replace(/[\s.°º]/g, '');
  return key
    .replace(/^ukgal/, 'impgal')
    .replace(/^gal(?:lons?)?\(us\)$/, 'gal')
    .replace(/^gal(?:lons?)?\(?imp\)?$/, 'impgal');
}

function scaled(factors: Factors, by: number): ReadonlyMap<string, (x: number) => number> {
  const entries = Object.entries(factors).map(([unit, factor]) => {
    // Dividing keeps exact what a power of ten would blur: 2250 ug/L is 2.25.
    const inverse = Math.round(1 / factor);
    const exactInverse = factor < 1 && Math.abs(inverse * factor - 1) < 1e-15;
    const convert = (x: number): number => (exactInverse ? (x * by) / inverse : x * factor * by);
    return [unit, convert] as const;
  });
  return new Map(entries);
}
