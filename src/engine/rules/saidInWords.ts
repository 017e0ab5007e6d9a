import { foundBy } from './foundBy.js';
import { conditionerNoted } from './conditionerNoted.js';
import { copperInTopOff } from './copperInTopOff.js';
import { absorber } from './absorber.js';
import { copperPresence } from './copperPresence.js';
import { cut } from './phrases.js';
import { daily, type Finder, type Found, type FindingWords, type Rule, type Severity } from './rule.js';
import { noticed } from './noticed.js';
import { saidTexts } from './saidTexts.js';
import type { Treatment } from './treatment.js';
import type { Fact, FactKind } from '../words/fact.js';

interface SaidInWords {
  readonly code: 'said-in-words';
  readonly kind: FactKind;
  readonly words: string;
}

/** Rules that name the same thing at its row with more than its words. */
const named: Partial<Record<FactKind, Finder>> = {
  'ammonia binder': conditionerNoted,
  'reducing dechlorinator': conditionerNoted,
  'copper in the top-off': copperInTopOff,
  absorbers: absorber,
};

/**
 * What a note or a text about the fish says of this tank and now, where no other rule names it at that row: plans,
 * hearsay, what is denied or over, and other tanks are left alone.
 *
 * Source: [Practice].
 */
export const saidInWords: Rule<SaidInWords> = {
  about: 'a mishap, medicine, absorber, invertebrate, ammonia or dangerous sign said in words',
  codes: { 'said-in-words': ['danger', 'warning', 'note'] },
  sources: ['Practice'],
  needs: [['note', 'signs']],
  yieldsTo: [conditionerNoted, copperInTopOff, ...absorber.yieldsTo, absorber],
  find,
  words,
  examples: [
    { log: daily('Cu|note', 2.25, '2.25|heater stuck on'), finds: ['danger 3 said-in-words'] },
    { log: daily('Cu|note', 2.25, '2.25|carbon in the filter'), finds: ['warning 3 said-in-words'] },
    { log: daily('Cu|note', 2.25, '2.25|UV is running'), finds: ['note 3 said-in-words'] },
    { log: daily('Cu|note', 2.25, '2.25|ordered carbon for the display'), finds: [] },
  ],
};

function find(treatment: Treatment): readonly Found<SaidInWords>[] {
  const { log, card } = treatment;
  const isCopperIn = copperPresence(treatment);
  const found: Found<SaidInWords>[] = [];
  for (const { entry, column, facts } of saidTexts(log)) {
    if (column !== 'note' && column !== 'signs') continue;
    const row = log.row[entry] ?? 0;
    const when = log.when[entry] ?? null;
    for (const fact of distinct(facts)) {
      const says = noticed[fact.kind];
      if (says === undefined || fact.polarity !== 'now') continue;
      if (says.onlyWithCopper === true && isCopperIn[entry] !== 1) continue;
      if (isNamed(named[fact.kind], treatment, row)) continue;
      const severity: Severity = says.severity(fact, card.form);
      found.push({ code: 'said-in-words', kind: fact.kind, words: fact.name, severity, when, row, source: 'Practice' });
    }
  }
  return found;
}

/** Each kind once in a text. */
function distinct(facts: readonly Fact[]): readonly Fact[] {
  return facts.filter(
    (fact, at) => facts.findIndex((other) => other.kind === fact.kind && other.polarity === fact.polarity) === at,
  );
}

function isNamed(rule: Finder | undefined, treatment: Treatment, row: number): boolean {
  return rule !== undefined && foundBy(rule, treatment).some((finding) => finding.row === row);
}

function words({ kind, words: said }: SaidInWords): FindingWords {
  const says = noticed[kind];
  if (says === undefined) throw new Error(`nothing is said of ${kind}`);
  return { finding: `"${cut(said)}" is noted: ${says.step}.`, why: says.why };
}
