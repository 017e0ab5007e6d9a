import { freeAmmonia, type AmmoniaBasis } from '../ammonia/freeAmmonia.js';
import * as limits from '../limits/limits.js';
import { celsius, hoursPerDay, phNbs, practicalSalinity, totalAmmoniaMgPerLitre } from '../units/quantity.js';
import type { Treatment } from './treatment.js';

/** An ammonia test that cannot be turned into NH3. */
export type UnjudgedAmmonia =
  | {
      readonly code: 'ammonia-outside-range';
      readonly total: number;
      readonly field: string;
      readonly given: number;
      readonly min: number;
      readonly max: number;
    }
  | { readonly code: 'ammonia-not-judged'; readonly total: number; readonly missing: readonly string[] };

/** More of the total than this is never un-ionised where the formula holds (pH 8.5, 35 °C, 5 g/kg). */
const mostFree = 0.26;
/** The formula ends here; in saltier water it overstates NH3 by a trace. [g/kg] */
const formulaTop = 35;
/** How old a value of the water may be for an ammonia test. [days] */
const lasting = limits.waterTestAge.value / hoursPerDay;

/** No more of an ammonia test than this is un-ionised, whatever the water. [mg NH3/L] */
export function mostFreeOf(total: number, basis: AmmoniaBasis | 'free'): number {
  return basis === 'free' ? total : total * 1.22 * mostFree;
}

/** Un-ionised ammonia of a test in a row, by the water of that row. [mg NH3/L] */
export function freeAmmoniaIn(
  treatment: Treatment,
  basis: AmmoniaBasis | 'free',
): (total: number, index: number) => number | UnjudgedAmmonia {
  const water = waterAt(treatment);
  return (total, index) => freeOf(total, basis, water(index));
}

/** NH3 unless the heading says N; a column of free or un-ionised ammonia needs no formula. */
export function basisOf({ log }: Treatment): AmmoniaBasis | 'free' {
  const text = log.headings.find(({ words }) => words?.kind === 'ammonia')?.text ?? '';
  if (/\bfree\b|\bun-?ioni[sz]ed\b/i.test(text)) return 'free';
  return /\bTAN\b|nitrogen|[-–(]\s*N\b|\bas N\b|\bmg N\b|\bNH[34]N\b/i.test(text) ? 'N' : 'NH3';
}

interface Water {
  readonly pH: number;
  readonly temperature: number;
  readonly salinity: number;
}

/** The water of an entry, from its row, else the last value of the day, else the card; NaN where none says. */
function waterAt({ log, card }: Treatment): (index: number) => Water {
  const { pH, temperature, salinity } = log.numbers;
  const last = (column: Float64Array | null, index: number, ofCard: number | null): number => {
    for (let at = index; column !== null && at >= 0; at--) {
      if ((log.when[index] ?? NaN) - (log.when[at] ?? NaN) > lasting) break;
      const value = column[at] ?? NaN;
      if (value > 0) return value;
    }
    return ofCard ?? NaN;
  };
  return (index) => ({
    pH: last(pH, index, card.pH),
    temperature: last(temperature, index, card.temperature),
    salinity: last(salinity, index, card.salinity),
  });
}

function freeOf(total: number, basis: AmmoniaBasis | 'free', water: Water): number | UnjudgedAmmonia {
  if (basis === 'free') return total;
  const missing = (['pH', 'temperature', 'salinity'] as const).filter((name) => Number.isNaN(water[name]));
  if (missing.length > 0) return { code: 'ammonia-not-judged', total, missing };
  const { pH, temperature, salinity } = water;
  const free = freeAmmonia({
    total: totalAmmoniaMgPerLitre(total),
    pH: phNbs(pH),
    temperature: celsius(temperature),
    salinity: practicalSalinity(salinity > formulaTop && salinity <= limits.saltiest.value ? formulaTop : salinity),
    as: basis,
  });
  if (free.ok) return free.value;
  const { problem } = free;
  if (problem.code !== 'outside-validity') throw new Error(`no such refusal: ${problem.code}`);
  const { field, given, min, max } = problem;
  return { code: 'ammonia-outside-range', total, field, given, min, max };
}
