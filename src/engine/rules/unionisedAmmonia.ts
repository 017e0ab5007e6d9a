import { freeAmmonia, type AmmoniaBasis } from '../ammonia/freeAmmonia.js';
import { limits } from '../limits/limits.js';
import { celsius, hoursPerDay, phNbs, practicalSalinity, totalAmmoniaMgPerLitre } from '../units/quantity.js';
import type { Finding, Severity } from './finding.js';
import type { Rule } from './rule.js';
import type { Treatment } from './treatment.js';

/** From the worst down. [mg NH3/L] */
const grades: readonly { readonly from: number; readonly severity: Severity }[] = [
  { from: limits.ammoniaDanger.value, severity: 'danger' },
  { from: limits.ammoniaWarning.value, severity: 'warning' },
  { from: limits.ammoniaNote.value, severity: 'note' },
];
const tolerance = 1e-9;
/** More of the total than this is never un-ionised where the formula holds (pH 8.5, 35 °C, 5 g/kg). */
const mostFree = 0.26;
/** The formula ends here; in saltier water it overstates NH3 by a trace. [g/kg] */
const formulaTop = 35;
/** How old a value of the water may be for an ammonia test. [days] */
const lasting = limits.waterTestAge.value / hoursPerDay;

/**
 * Un-ionised ammonia: 0.02 mg/L noted, 0.05 a warning, 0.10 a danger, from the total with pH, temperature and salinity
 * of the row, of the day, or of the card. One finding each time it gets worse.
 *
 * Source: [Practice] for the limits, [BowerBidwell1978] for the formula.
 */
export const unionisedAmmonia: Rule = (treatment) => {
  const { log } = treatment;
  const column = log.numbers.ammonia;
  const found: Finding[] = [];
  if (column === null) return found;
  const water = waterAt(treatment);
  const basis = basisOf(treatment);
  const once = new Set<Finding['code']>();
  let worst = grades.length;
  for (let index = 0; index < log.count; index++) {
    const total = column[index] ?? NaN;
    if (Number.isNaN(total)) continue;
    const judged =
      total * (basis === 'free' ? 1 : 1.22 * mostFree) < limits.ammoniaNote.value - tolerance
        ? 0
        : freeOf(total, basis, water(index));
    if (typeof judged !== 'number') {
      if (!once.has(judged.code)) found.push({ ...judged, severity: 'note', ...atEntry(treatment, index) });
      once.add(judged.code);
      continue;
    }
    const reached = grades.findIndex(({ from }) => judged >= from - tolerance);
    const limit = grades[reached];
    if (limit === undefined) worst = grades.length;
    else if (reached < worst) {
      worst = reached;
      const written = basis === 'free' ? null : ({ written: total, as: basis } as const);
      found.push({
        code: 'unionised-ammonia',
        free: judged,
        total: written,
        limit: limit.from,
        severity: limit.severity,
        ...atEntry(treatment, index),
      });
    }
  }
  return found;
};

type Unjudged = Unplaced<'ammonia-outside-range'> | Unplaced<'ammonia-not-judged'>;
type Unplaced<C extends Finding['code']> = Omit<
  Extract<Finding, { readonly code: C }>,
  'severity' | 'when' | 'row' | 'source'
>;

function atEntry({ log }: Treatment, index: number): { when: number | null; row: number | null; source: 'Practice' } {
  return { when: log.when[index] ?? null, row: log.row[index] ?? null, source: 'Practice' };
}

/** NH3 unless the heading says N; a column of free or un-ionised ammonia needs no formula. */
function basisOf({ log }: Treatment): AmmoniaBasis | 'free' {
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

function freeOf(total: number, basis: AmmoniaBasis | 'free', water: Water): number | Unjudged {
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
