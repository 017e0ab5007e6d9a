import { outsideValidity } from '../result/outsideValidity.js';
import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import { celsius68FromCelsius } from '../units/celsius68FromCelsius.js';
import {
  practicalSalinity,
  type Celsius,
  type Celsius68,
  type PracticalSalinity,
  type SpecificGravity,
} from '../units/quantity.js';
import { densityMilleroPoisson1981 } from './densityMilleroPoisson1981.js';
import { densityRange, outsideDensityRange } from './outsideDensityRange.js';

interface HydrometerReading {
  readonly specificGravity: SpecificGravity;
  readonly temperature: Celsius;
  readonly reference: Celsius;
}

/**
 * Salinity of sea water from its specific gravity.
 *
 * The S at which ρ(S, t) = SG·ρ(0, t reference), found by halving the range 0–42.
 *
 * Basis: practical salinity; temperatures ITS-90; one atmosphere.
 * Validity: S 0–42, both temperatures 0–40 °C; outside it the answer is `outside-validity`.
 * Differs from the source: nothing below 0 °C.
 * Source: [FofonoffMillard1983, p. 19, density]; the inverse of specificGravityOfSeawater.
 *
 * @param water.specificGravity [1]
 * @param water.temperature of the sample [°C]
 * @param water.reference of the pure water [°C]
 * @returns practical salinity [1]
 * @example salinityFromSpecificGravity({ specificGravity: specificGravity(1.02637), temperature: celsius(25), reference: celsius(25) }).value // ≈ 35.0
 */
export function salinityFromSpecificGravity(water: HydrometerReading): Result<PracticalSalinity, Problem> {
  const outside = outsideDensityRange(water);
  if (outside !== null) return refuse(outside);
  const temperature = celsius68FromCelsius(water.temperature);
  const pure = densityMilleroPoisson1981(practicalSalinity(0), celsius68FromCelsius(water.reference));
  const tooLightOrHeavy = outsideGravities(water.specificGravity, temperature, pure);
  if (tooLightOrHeavy !== null) return refuse(tooLightOrHeavy);
  return ok(salinityAtDensity(water.specificGravity * pure, temperature));
}

function outsideGravities(given: SpecificGravity, temperature: Celsius68, pure: number): Problem | null {
  const { salinity, source } = densityRange;
  const gravity = (s: number): number => densityMilleroPoisson1981(practicalSalinity(s), temperature) / pure;
  const [least, greatest] = [gravity(salinity.min), gravity(salinity.max)];
  const field = 'specific gravity';
  if (outsideValidity({ field, given, min: least, max: greatest, unit: '', source }) === null) return null;
  // The limits go into a sentence: what it offers must be accepted, so they are rounded inwards.
  return {
    code: 'outside-validity',
    field,
    given,
    min: inwards(least, Math.ceil),
    max: inwards(greatest, Math.floor),
    unit: '',
    source,
  };
}

function inwards(gravity: number, round: (x: number) => number): number {
  return round(Number((gravity * 1e5).toFixed(6))) / 1e5;
}

/** Density rises with salinity at every temperature of the range, so there is one answer. */
function salinityAtDensity(density: number, temperature: Celsius68): PracticalSalinity {
  let low: number = densityRange.salinity.min;
  let high: number = densityRange.salinity.max;
  if (density <= densityMilleroPoisson1981(practicalSalinity(low), temperature)) return practicalSalinity(low);
  if (density >= densityMilleroPoisson1981(practicalSalinity(high), temperature)) return practicalSalinity(high);
  // 50 halvings of 42 g/kg leave 4e-14, less than the density itself resolves.
  for (let halving = 0; halving < 50; halving++) {
    const middle = (low + high) / 2;
    if (densityMilleroPoisson1981(practicalSalinity(middle), temperature) < density) low = middle;
    else high = middle;
  }
  return practicalSalinity((low + high) / 2);
}
