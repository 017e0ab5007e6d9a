import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import { celsius68FromCelsius } from '../units/celsius68FromCelsius.js';
import {
  practicalSalinity,
  specificGravity,
  type Celsius,
  type PracticalSalinity,
  type SpecificGravity,
} from '../units/quantity.js';
import { densityMilleroPoisson1981 } from './densityMilleroPoisson1981.js';
import { outsideDensityRange } from './outsideDensityRange.js';

interface SeawaterSample {
  readonly salinity: PracticalSalinity;
  readonly temperature: Celsius;
  readonly reference: Celsius;
}

/**
 * Specific gravity of sea water: its density at its own temperature over that of pure water at the reference temperature.
 *
 * SG = ρ(S, t) ÷ ρ(0, t reference)
 *
 * Basis: practical salinity; temperatures ITS-90; one atmosphere. A hydrometer says its reference: 25/25, 20/20, 60/60 °F.
 * Validity: S 0–42, both temperatures 0–40 °C; outside it the answer is `outside-validity`.
 * Differs from the source: nothing below 0 °C.
 * Source: [FofonoffMillard1983, p. 19, density].
 *
 * @param water.salinity practical salinity [1]
 * @param water.temperature of the sample [°C]
 * @param water.reference of the pure water [°C]
 * @returns specific gravity [1]
 * @example specificGravityOfSeawater({ salinity: practicalSalinity(35), temperature: celsius(25), reference: celsius(25) }).value // ≈ 1.02637
 */
export function specificGravityOfSeawater(water: SeawaterSample): Result<SpecificGravity, Problem> {
  const outside = outsideDensityRange(water);
  if (outside !== null) return refuse(outside);
  // A salinity a rounding step below 0 has no square root.
  const salinity = practicalSalinity(Math.max(0, water.salinity));
  const sample = densityMilleroPoisson1981(salinity, celsius68FromCelsius(water.temperature));
  const pure = densityMilleroPoisson1981(practicalSalinity(0), celsius68FromCelsius(water.reference));
  return ok(specificGravity(sample / pure));
}
