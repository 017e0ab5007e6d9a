/**
 * The closed table of units: how each is written, what it is worth, and what the sentences say of its dimension. A unit
 * is added here and nowhere else.
 */
interface Unit {
  /** Its spellings, without spaces and in small letters; the first is its key. */
  readonly as: string;
  /** How many of the dimension's first unit one of it is; a scale that does not start at 0 converts by itself. */
  readonly of: number | ((x: number) => number);
  /** The key as people print it, where it differs. */
  readonly printed?: string;
  /** No word of English: a unit also where it stands in a heading without brackets. */
  readonly loose?: true;
}

export interface Dimension {
  /** The unit of a bare number, in which the engine works. */
  readonly unit: string;
  /** The units a text may name, as a message lists them. */
  readonly known: string;
  /** What a value of it is called, and how to write one. */
  readonly noun: string;
  readonly write: string;
  /** Each converter takes a number in its unit to the unit of a bare number. */
  readonly convert: ReadonlyMap<string, (x: number) => number>;
}

// NIST Handbook 44, appendix C: the US gallon is 231 cubic inches of 2.54 cm each, exactly; UK Weights and Measures Act 1985: the imperial gallon.
const usGallon = 3.785411784;
const volumes: readonly Unit[] = [
  { as: 'l ltr', of: 1, printed: 'L' },
  { as: 'litre litres liter liters', of: 1, loose: true },
  { as: 'ml', of: 1e-3, printed: 'mL', loose: true },
  { as: 'cc', of: 1e-3, printed: 'mL' },
  { as: 'millilitre millilitres milliliter milliliters', of: 1e-3 },
  { as: 'gal gallon gallons', of: usGallon, loose: true },
  { as: 'usgal usgallon usgallons galus gallonus gallonsus', of: usGallon },
  { as: 'impgal impgallon impgallons', of: 4.54609, printed: 'imp gal', loose: true },
  { as: 'imperialgal imperialgallon imperialgallons', of: 4.54609 },
  { as: 'tsp', of: usGallon / 768, loose: true },
  { as: 'tbsp', of: usGallon / 256, loose: true },
  { as: 'floz', of: usGallon / 128, printed: 'fl oz', loose: true },
];
const lengths: readonly Unit[] = [
  { as: 'cm', of: 1 },
  { as: 'mm', of: 0.1 },
  { as: 'm', of: 100 },
  { as: 'in inch inches', of: 2.54 },
  { as: 'ft foot feet', of: 30.48 },
];
const levels: readonly Unit[] = [
  { as: 'mg/l', of: 1, printed: 'mg/L' },
  { as: 'ug/l', of: 1e-3, printed: 'ug/L' },
  { as: 'ppm', of: 1, loose: true },
  { as: 'ppb', of: 1e-3, loose: true },
];
const strengths: readonly Unit[] = [
  { as: 'mg/ml', of: 1, printed: 'mg/mL' },
  { as: 'g/l', of: 1 },
];
const salinities: readonly Unit[] = [
  { as: 'g/kg', of: 1 },
  { as: 'ppt', of: 1, loose: true },
  { as: 'psu', of: 1, loose: true },
];
const spans: readonly Unit[] = [
  { as: 'h hr hrs hour hours', of: 1 },
  { as: 'd day days', of: 24 },
];
const masses: readonly Unit[] = [
  { as: 'g gram grams', of: 1 },
  { as: 'mg', of: 1e-3 },
  { as: 'kg', of: 1e3 },
];
const temperatures: readonly Unit[] = [
  { as: 'c', of: 1, printed: '°C' },
  { as: 'f', of: (x) => (x - 32) / 1.8, printed: '°F' },
];

const aVolume = { noun: 'a volume', known: 'L mL gal, imp gal, cc tsp tbsp fl oz' };

export const dimensions = {
  litres: { ...aVolume, unit: 'L', write: 'litres, like 200, "200 L" or "50 gal"', convert: scaled(volumes) },
  millilitres: {
    ...aVolume,
    unit: 'mL',
    write: 'millilitres, like 12.5, "12.5 mL" or "2 tsp"',
    convert: scaled(volumes, 1e3),
  },
  centimetres: {
    unit: 'cm',
    known: 'cm mm m in ft',
    noun: 'a length',
    write: 'centimetres, like 60, "60 cm" or "24 in"',
    convert: scaled(lengths),
  },
  level: {
    unit: 'mg/L',
    known: 'mg/L ug/L ppm ppb',
    noun: 'a level',
    write: 'mg/L, like 2.05, "2.05 ppm" or "2050 ug/L"',
    convert: scaled(levels),
  },
  strength: {
    unit: 'mg/mL',
    known: 'mg/mL g/L',
    noun: 'a strength',
    write: 'mg of copper per mL, like 1.02 or "1.02 mg/mL"',
    convert: scaled(strengths),
  },
  salinity: {
    unit: 'g/kg',
    known: 'g/kg ppt psu',
    noun: 'a salinity',
    write: 'g/kg, like 35 or "35 ppt"',
    convert: scaled(salinities),
  },
  hours: {
    unit: 'h',
    known: 'h, days',
    noun: 'a number of hours',
    write: 'hours, like 96, "96 h" or "4 days"',
    convert: scaled(spans),
  },
  days: {
    unit: 'days',
    known: 'days, h',
    noun: 'a number of days',
    write: 'days, like 30 or "30 days"',
    convert: scaled(spans, 1 / 24),
  },
  grams: {
    unit: 'g',
    known: 'mg g kg',
    noun: 'a mass',
    write: 'grams, like 3, "3 g" or "500 mg"',
    convert: scaled(masses),
  },
  celsius: {
    unit: '°C',
    known: 'C F',
    noun: 'a temperature',
    write: '°C, like 25, "25 C" or "77 F"',
    convert: scaled(temperatures),
  },
  plain: {
    unit: '',
    known: 'none: a bare number',
    noun: 'a number',
    write: 'a bare number without a unit',
    convert: scaled([]),
  },
} as const satisfies Record<string, Dimension>;

export type DimensionName = keyof typeof dimensions;

/** Headings may give a salinity as a specific gravity. */
const specificGravity: Unit = { as: 'sg', of: 1, printed: 'SG' };
const all = [
  ...volumes,
  ...lengths,
  ...levels,
  ...strengths,
  ...salinities,
  ...spans,
  ...masses,
  ...temperatures,
  specificGravity,
];

/** Units as people print them, by their keys. */
export const printedUnits: ReadonlyMap<string, string> = new Map(
  all.flatMap(({ as, printed }) => (printed === undefined ? [] : [[spellings(as)[0] ?? '', printed]])),
);

/** Spellings that are units in a heading without brackets. */
export const looseUnits: ReadonlySet<string> = new Set(all.flatMap(({ as, loose }) => (loose ? spellings(as) : [])));

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

function spellings(as: string): readonly string[] {
  return as.split(' ');
}

function scaled(units: readonly Unit[], by = 1): ReadonlyMap<string, (x: number) => number> {
  return new Map(
    units.flatMap(({ as, of }) => spellings(as).map((spelling) => [spelling, converter(of, by)] as const)),
  );
}

function converter(of: Unit['of'], by: number): (x: number) => number {
  if (typeof of === 'function') return of;
  // Dividing keeps exact what a power of ten would blur: 2250 ug/L is 2.25.
  const inverse = Math.round(1 / of);
  const exactInverse = of < 1 && Math.abs(inverse * of - 1) < 1e-15;
  return exactInverse ? (x) => (x * by) / inverse : (x) => x * of * by;
}
