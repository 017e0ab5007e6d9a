import type { AmmoniaBasis } from '../ammonia/freeAmmonia.js';
import * as limits from '../limits/limits.js';
import { basisOf, freeAmmoniaIn, mostFreeOf, type UnjudgedAmmonia } from './freeAmmoniaIn.js';
import type { Treatment } from './treatment.js';
import { daily, type Rule, type Found, type FindingWords, type Severity } from './rule.js';
import { rounded } from './phrases.js';

type Ammonia =
  | {
      readonly code: 'unionised-ammonia';
      readonly free: number;
      /** As written; null: the column itself is of un-ionised ammonia. */
      readonly total: { readonly written: number; readonly as: AmmoniaBasis } | null;
      readonly limit: number;
    }
  | UnjudgedAmmonia;

/** From the worst down. [mg NH3/L] */
const grades: readonly { readonly from: number; readonly severity: Severity }[] = [
  { from: limits.ammoniaDanger.value, severity: 'danger' },
  { from: limits.ammoniaWarning.value, severity: 'warning' },
  { from: limits.ammoniaNote.value, severity: 'note' },
];
const tolerance = 1e-9;
/**
 * Un-ionised ammonia: 0.02 mg/L noted, 0.05 a warning, 0.10 a danger, from the total with pH, temperature and salinity
 * of the row, of the day, or of the card. One finding each time it gets worse.
 *
 * Source: [Practice] for the limits, [BowerBidwell1978] for the formula.
 */
export const unionisedAmmonia: Rule<Ammonia> = {
  about: 'un-ionised ammonia, from the total with pH, temperature and salinity',
  codes: {
    'unionised-ammonia': ['danger', 'warning', 'note'],
    'ammonia-outside-range': ['note'],
    'ammonia-not-judged': ['note'],
  },
  sources: ['Practice'],
  needs: [['ammonia']],
  yieldsTo: [],
  find,
  words,
  examples: [
    { log: daily('Cu|free NH3', '2.25|0', '2.25|0.05'), finds: ['warning 3 unionised-ammonia'] },
    { log: daily('Cu|NH3|pH|temp|salinity', '2.25|1|9.5|25|33'), finds: ['note 2 ammonia-outside-range'] },
    { log: daily('Cu|NH3', '2.25|0', '2.25|1'), finds: ['note 3 ammonia-not-judged'] },
    { log: daily('Cu|free NH3', '2.25|0', '2.25|0.01'), finds: [] },
  ],
};

function find(treatment: Treatment): readonly Found<Ammonia>[] {
  const { log } = treatment;
  const column = log.numbers.ammonia;
  const found: Found<Ammonia>[] = [];
  if (column === null) return found;
  const basis = basisOf(treatment);
  const freeAt = freeAmmoniaIn(treatment, basis);
  const once = new Set<Ammonia['code']>();
  let worst = grades.length;
  for (let index = 0; index < log.count; index++) {
    const total = column[index] ?? NaN;
    if (Number.isNaN(total)) continue;
    const judged = mostFreeOf(total, basis) < limits.ammoniaNote.value - tolerance ? 0 : freeAt(total, index);
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
}

function words(finding: Ammonia): FindingWords {
  switch (finding.code) {
    case 'unionised-ammonia':
      return wordsOfFree(finding);
    case 'ammonia-outside-range': {
      const { total, field, given, min, max } = finding;
      return {
        finding:
          `Ammonia ${rounded(total)} mg/L cannot be turned into NH3 at ${field} ${rounded(given)}, outside ${min} to ${max}: ` +
          `test again, or judge it by the in-tank indicator.`,
        why: 'The sea-water formula holds from pH 7.5 to 8.5, 5 to 35 °C and 5 to 35 g/kg.',
      };
    }
    case 'ammonia-not-judged':
      return {
        finding: `Ammonia ${rounded(finding.total)} mg/L cannot be judged without ${inWords(finding.missing)}: write it in the row or on the card.`,
        why: 'How much of the total is poisonous depends on pH, temperature and salinity.',
      };
  }
}

function wordsOfFree({ free, total, limit }: Extract<Ammonia, { code: 'unionised-ammonia' }>): FindingWords {
  const [note, warning, danger] = [limits.ammoniaNote.value, limits.ammoniaWarning.value, limits.ammoniaDanger.value];
  const advice =
    limit < warning
      ? 'feed less and test again today'
      : 'change water now, with new water at the level of the tank (QT.AMMONIACHANGE), and add no binder';
  return {
    finding:
      `Un-ionised ammonia is ${rounded(free, 3)} mg/L NH3${total === null ? '' : `, from ${rounded(total.written)} mg/L total (as ${total.as})`}, ` +
      `${limit.toFixed(2)} or more: ${advice}.`,
    why:
      `Ammonia is the main killer in quarantine: ${note.toFixed(2)} mg/L NH3 is noted, ${warning.toFixed(2)} ` +
      `a warning, ${danger.toFixed(2)} a danger. A liquid test may read falsely positive in copper.`,
  };
}

function inWords(names: readonly string[]): string {
  const [last = ''] = names.slice(-1);
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} and ${last}`;
}

function atEntry({ log }: Treatment, index: number): { when: number | null; row: number | null; source: 'Practice' } {
  return { when: log.when[index] ?? null, row: log.row[index] ?? null, source: 'Practice' };
}
