import * as limits from '../limits/limits.js';
import { anyTextFits } from '../log/table/anyTextFits.js';
import { copperPresence } from './copperPresence.js';
import { isDenied } from './isDenied.js';
import type { Treatment } from './treatment.js';
import { daily, type Rule, type Found, type FindingWords } from './rule.js';
import { rounded, cut } from './phrases.js';

type LowSalinity =
  | { readonly code: 'low-salinity'; readonly salinity: number; readonly limit: number; readonly ofCard: boolean }
  | { readonly code: 'low-salinity-treatment'; readonly words: string };

const maybe = /hypo|salin/i;
const treatment =
  /\bhypo[ -]?salin(?:e|ity)\b|\bhypo\b(?![ -]?(?:chlor|derm))|\blow(?:ered|ering|er)?[ -]salinity (?:treatment|therapy|bath|protocol|quarantine)\b|\b(?:osmotic shock|low[ -]salt) (?:treatment|therapy)\b/gi;

/**
 * Copper in water of low salinity: under 25 g/kg a warning, under 20, or together with a low-salinity treatment, a
 * danger. One finding each time it gets worse, as long as copper is in the water.
 *
 * Source: [ZecHadfieldHungerford2021, abstract] for 25; [Memory] for 20.
 */
export const lowSalinity: Rule<LowSalinity> = {
  about: 'copper in water of low salinity, or together with a low-salinity treatment',
  codes: { 'low-salinity': ['danger', 'warning'], 'low-salinity-treatment': ['danger'] },
  sources: ['ZecHadfieldHungerford2021', 'Memory'],
  needs: [['copper'], ['salinity', 'note', 'signs']],
  yieldsTo: [],
  find,
  words,
  examples: [
    { log: daily('Cu|salinity', 2.25, '2.25|24'), finds: ['warning 3 low-salinity'] },
    { log: daily('Cu|note', 2.25, '2.25|started hyposalinity'), finds: ['danger 3 low-salinity-treatment'] },
    { log: daily('Cu|salinity', 2.25, '2.25|25'), finds: [] },
  ],
};

function find(all: Treatment): readonly Found<LowSalinity>[] {
  const present = copperPresence(all);
  const tested = testedSalinities(all, present);
  return [...tested.found, ...(tested.any ? [] : cardSalinity(all)), ...notedTreatment(all, present)];
}

function words(finding: LowSalinity): FindingWords {
  if (finding.code === 'low-salinity-treatment') {
    return {
      finding: `"${cut(finding.words)}" is noted with copper in the water: choose one of the two treatments, never both at once.`,
      why: 'Copper together with a low-salinity treatment is a danger to the fish (from memory).',
    };
  }
  const { salinity, limit, ofCard } = finding;
  const published = limits.salinityWarning.value;
  return {
    finding:
      `Salinity ${rounded(salinity)} g/kg${ofCard ? ' on the card' : ''} is below ${limit} with copper in the water: ` +
      `${limit < published ? 'bring copper down or salinity up slowly, and let an aquatic veterinarian decide which' : `raise it slowly to ${published} or more`}.`,
    why: `The published copper treatment was run at ${published} g/kg and over; under ${limits.salinityDanger.value}, or with a low-salinity treatment, copper is a danger (from memory).`,
  };
}

function testedSalinities({ log }: Treatment, present: Uint8Array): { found: Found<LowSalinity>[]; any: boolean } {
  const found: Found<LowSalinity>[] = [];
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

function finding(
  salinity: number,
  at: { when: number | null; row: number | null },
  ofCard: boolean,
): Found<LowSalinity> {
  const isDanger = salinity < limits.salinityDanger.value;
  return {
    code: 'low-salinity',
    salinity,
    limit: isDanger ? limits.salinityDanger.value : limits.salinityWarning.value,
    ofCard,
    severity: isDanger ? 'danger' : 'warning',
    ...at,
    source: isDanger ? 'Memory' : 'ZecHadfieldHungerford2021',
  };
}

function cardSalinity({ card }: Treatment): Found<LowSalinity>[] {
  if (card.salinity === null || classOf(card.salinity) === 0) return [];
  return [finding(card.salinity, { when: null, row: null }, true)];
}

function notedTreatment({ log }: Treatment, present: Uint8Array): Found<LowSalinity>[] {
  const { note, signs } = log.texts;
  const found: Found<LowSalinity>[] = [];
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
