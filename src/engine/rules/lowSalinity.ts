import { limits } from '../limits/limits.js';
import { anyTextFits } from '../log/table/anyTextFits.js';
import type { Finding } from './finding.js';
import { copperPresence } from './copperPresence.js';
import { isDenied } from './isDenied.js';
import type { Rule } from './rule.js';
import type { Treatment } from './treatment.js';

const maybe = /hypo|salin/i;
const treatment =
  /\bhypo[ -]?salin(?:e|ity)\b|\bhypo\b(?![ -]?(?:chlor|derm))|\blow(?:ered|ering|er)?[ -]salinity (?:treatment|therapy|bath|protocol|quarantine)\b|\b(?:osmotic shock|low[ -]salt) (?:treatment|therapy)\b/gi;

/**
 * Copper in water of low salinity: under 25 g/kg a warning, under 20, or together with a low-salinity treatment, a
 * danger. One finding each time it gets worse, as long as copper is in the water.
 *
 * Source: [ZecHadfieldHungerford2021, abstract] for 25; [Memory] for 20.
 */
export const lowSalinity: Rule = (all) => {
  const present = copperPresence(all);
  const tested = testedSalinities(all, present);
  return [...tested.found, ...(tested.any ? [] : cardSalinity(all)), ...notedTreatment(all, present)];
};

function testedSalinities({ log }: Treatment, present: Uint8Array): { found: Finding[]; any: boolean } {
  const found: Finding[] = [];
  const salinities = log.numbers.salinity;
  let any = false;
  let worst = 0;
  for (let index = 0; salinities !== null && index < log.count; index++) {
    const salinity = salinities[index] ?? NaN;
    if (!(salinity >= limits.salinityWritten.value)) continue;
    any = true;
    const class_ = classOf(salinity);
    if (class_ > worst && present[index] === 1) {
      const at = { when: log.when[index] ?? null, row: log.row[index] ?? null };
      found.push(finding(salinity, at, false));
    }
    worst = class_ === 0 ? 0 : Math.max(worst, present[index] === 1 ? class_ : 0);
  }
  return { found, any };
}

function classOf(salinity: number): 0 | 1 | 2 {
  return salinity < limits.salinityDanger.value ? 2 : salinity < limits.salinityWarning.value ? 1 : 0;
}

function finding(salinity: number, at: { when: number | null; row: number | null }, ofCard: boolean): Finding {
  const isDanger = salinity < limits.salinityDanger.value;
  const { value, source } = isDanger ? limits.salinityDanger : limits.salinityWarning;
  return {
    code: 'low-salinity',
    salinity,
    limit: value,
    ofCard,
    severity: isDanger ? 'danger' : 'warning',
    ...at,
    source,
  };
}

function cardSalinity({ card }: Treatment): Finding[] {
  if (card.salinity === null || classOf(card.salinity) === 0) return [];
  return [finding(card.salinity, { when: null, row: null }, true)];
}

function notedTreatment({ log }: Treatment, present: Uint8Array): Finding[] {
  const { note, signs } = log.texts;
  const found: Finding[] = [];
  const isMaybe = (text: string): boolean => maybe.test(text);
  if (!anyTextFits(note, isMaybe) && !anyTextFits(signs, isMaybe)) return found;
  for (let index = 0; index < log.count; index++) {
    if (present[index] !== 1) continue;
    const words = treatmentIn(note?.[index] ?? '') ?? treatmentIn(signs?.[index] ?? '');
    if (words === null) continue;
    const at = { when: log.when[index] ?? null, row: log.row[index] ?? null };
    found.push({ code: 'low-salinity-treatment', words, severity: 'danger', ...at, source: 'Memory' });
  }
  return found;
}

function treatmentIn(text: string): string | null {
  if (text === '' || !maybe.test(text)) return null;
  for (const match of text.matchAll(treatment)) {
    if (!isDenied(text, { from: match.index, to: match.index + match[0].length })) return match[0];
  }
  return null;
}
