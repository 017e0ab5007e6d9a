import { auditFindings } from '../../../src/engine/audit/auditFindings.js';
import { seededNumbers } from '../../../src/engine/level/seededNumbers.js';
import { columnKinds, headingKey } from '../../../src/engine/log/headings/columnKinds.js';
import { auditRules } from '../../../src/engine/rules/auditRules.js';
import type { Finding } from '../../../src/engine/rules/finding.js';
import type { Rule } from '../../../src/engine/rules/rule.js';
import type { Treatment } from '../../../src/engine/rules/treatment.js';
import { findingText } from '../../../src/engine/text/findingText.js';
import { auditOf, treatmentIn } from '../audit/faults/auditOf.js';
import { faultKinds, plantedLog } from '../audit/faults/auditFigures.js';
import { writtenLog } from '../audit/faults/writtenLog.js';
import { chelatedCard } from './raisedLog.js';
import { treatmentFrom } from './treatmentFrom.js';

const rules: readonly Rule<{ readonly code: string }>[] = auditRules;
const codesOf = (rule: (typeof rules)[number]): string[] => Object.keys(rule.codes);
const named = rules.map((rule) => [codesOf(rule)[0] ?? '', rule] as const);

function treatmentOfExample({
  log,
  card = chelatedCard,
}: Pick<(typeof rules)[number]['examples'][number], 'log' | 'card'>): Treatment {
  return treatmentFrom(log, card);
}

function inShort({ severity, row, code }: Pick<Finding, 'severity' | 'row'> & { readonly code: string }): string {
  return `${severity} ${row ?? '-'} ${code}`;
}

/** The same log with the cells of some columns emptied. */
function without(log: string, kinds: readonly string[]): string {
  const [heading = '', ...rows] = log.split('\n');
  const isLeft = heading
    .split('|')
    .map((text) => !kinds.includes(columnKinds.find(({ words }) => words.test(headingKey(text)))?.kind ?? ''));
  const emptied = rows.map((row) => row.split('|').map((cell, column) => (isLeft[column] === true ? cell : '')));
  return [heading, ...emptied.map((cells) => cells.join('|'))].join('\n');
}

describe('auditRules', () => {
  it('has no code twice', () => {
    const codes = rules.flatMap(codesOf);
    expect(codes.length).toBeGreaterThan(40);
    expect(new Set(codes).size).toBe(codes.length);
  });

  it.each(named)('%s finds in its examples what they say', (_, rule) => {
    expect(rule.examples.length).toBeGreaterThan(0);
    for (const example of rule.examples) {
      const found = rule.find(treatmentOfExample(example), new Set());
      expect(found.map(inShort)).toEqual(example.finds);
      // In the whole audit, too: nothing that it yields to is there.
      const whole = auditFindings(treatmentOfExample(example));
      expect(whole.filter(({ code }) => codesOf(rule).includes(code)).map(inShort)).toEqual(
        expect.arrayContaining([...example.finds]),
      );
    }
  });

  it.each(named)('%s shows each of its codes, and a log in which it is silent', (code, rule) => {
    const shown = new Set(rule.examples.flatMap(({ finds }) => finds.map((each) => each.split(' ')[2])));
    expect(shown).toEqual(new Set(codesOf(rule)));
    // The verdict always speaks.
    expect(rule.examples.some(({ finds }) => finds.length === 0)).toBe(code !== 'verdict');
  });

  it.each(named)('%s has the severities, the sources and the words that it declares', (_, rule) => {
    for (const example of rule.examples) {
      for (const finding of auditFindings(treatmentOfExample(example))) {
        if (!codesOf(rule).includes(finding.code)) continue;
        expect((rule.codes as Record<string, readonly string[]>)[finding.code]).toContain(finding.severity);
        expect(rule.sources).toContain(finding.source);
        const { finding: said, why } = findingText(finding);
        expect(said).toMatch(/^\S.*\.$/);
        expect(why).toMatch(/^[A-Z].*\.$/);
        expect(`${said} ${why}`).not.toMatch(/NaN|undefined|null|Infinity|\.\.|\s{2}|\b(?:safe|clean|cured?)\b/i);
      }
    }
  });

  it.each(named)('%s finds nothing without what it needs', (_, rule) => {
    for (const example of rule.examples.filter(({ finds }) => finds.length > 0)) {
      for (const kinds of rule.needs) {
        const found = rule.find(treatmentOfExample({ ...example, log: without(example.log, kinds) }), new Set());
        expect(found.map(inShort)).toEqual([]);
      }
    }
  });
});

describe('the order of the rules', () => {
  const orders = [1, 2, 3, 4].map((seed) => shuffled(rules, seed));
  const planted = faultKinds.flatMap((kind, index) =>
    [0, 1].map((extra) => {
      const { log, seed } = plantedLog(kind, 1000 * (index + 1) + 17 * extra);
      return writtenLog(log, seededNumbers(seed + 1));
    }),
  );

  it('carries no meaning: any order finds the same, in the same order', () => {
    const examples = rules.flatMap((rule) => rule.examples);
    for (const example of examples) {
      const usual = auditFindings(treatmentOfExample(example));
      for (const order of orders) expect(auditFindings(treatmentOfExample(example), order)).toEqual(usual);
    }
    for (const written of planted) {
      const usual = auditOf(written);
      for (const order of orders) expect(auditFindings(treatmentIn(written), order)).toEqual(usual);
    }
  });

  it('is seen to matter where a rule yields to nothing', () => {
    const bare = rules.map((rule) => ({ ...rule, yieldsTo: [] }));
    expect(planted.some((written) => auditFindings(treatmentIn(written), bare).length > auditOf(written).length)).toBe(
      true,
    );
  });
});

function shuffled<T>(items: readonly T[], seed: number): readonly T[] {
  const random = seededNumbers(seed);
  const keys = items.map((item) => ({ item, key: random.uniform() }));
  return keys.sort((a, b) => a.key - b.key).map(({ item }) => item);
}
