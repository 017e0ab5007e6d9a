import type { Finding, FindingAt } from '../../../src/engine/rules/finding.js';
import { findingText } from '../../../src/engine/text/findingText.js';

/** What the sentences of some codes are written from; that every code has words is seen from the rules' examples. */
type Samples = {
  readonly [C in Finding['code']]?: readonly Omit<Extract<Finding, { readonly code: C }>, keyof FindingAt>[];
};

const running = { kind: 'running', days: 20 } as const;
const none = { kind: 'not complete', days: 0 } as const;
const complete = { kind: 'complete', days: 31 } as const;
const long = 'a very long line about several fish that somebody wrote in a hurry';
const unread = { code: 'not-a-reading', at: { row: 12 }, given: '"LOW"' } as const;

const samples = {
  verdict: [
    { code: 'verdict', answer: complete, wanted: 30, tested: true, open: null },
    { code: 'verdict', answer: running, wanted: 30, tested: true, open: null },
    { code: 'verdict', answer: { kind: 'running', days: 30.5 }, wanted: 30, tested: true, open: null },
    { code: 'verdict', answer: none, wanted: 30, tested: true, open: null },
    { code: 'verdict', answer: none, wanted: 30, tested: false, open: null },
    { code: 'verdict', answer: running, wanted: 30, tested: true, open: { row: 4, ifBelow: none, ifHeld: running } },
  ],
  'verdict-days': [
    {
      code: 'verdict-days',
      kind: 'running',
      days: 2.5,
      longest: 2.5,
      wanted: 30,
      from: 46082,
      to: 46084,
      credited: 12,
    },
    {
      code: 'verdict-days',
      kind: 'not complete',
      days: 0,
      longest: 4,
      wanted: 30,
      from: 46082,
      to: 46086,
      credited: 0,
    },
    { code: 'verdict-days', kind: 'not complete', days: 0, longest: 0, wanted: 30, from: null, to: null, credited: 0 },
  ],
  'verdict-breaks': [
    { code: 'verdict-breaks', rows: [], lost: 0 },
    { code: 'verdict-breaks', rows: [7], lost: 1 },
    { code: 'verdict-breaks', rows: [7, 9, 11], lost: 5.25 },
  ],
  'verdict-untested': [
    { code: 'verdict-untested', stretches: 0, longest: 0, restarts: 0, lost: 0 },
    { code: 'verdict-untested', stretches: 1, longest: 48, restarts: 0, lost: 0 },
    { code: 'verdict-untested', stretches: 2, longest: 120, restarts: 1, lost: 9 },
  ],
  'hold-broken': [
    {
      code: 'hold-broken',
      level: 1.8,
      isBound: false,
      low: 1.95,
      days: 4,
      from: 46082,
      again: 46088,
      withinError: false,
      slip: false,
    },
    {
      code: 'hold-broken',
      level: 1,
      isBound: true,
      low: 1.95,
      days: 4,
      from: 46082,
      again: null,
      withinError: true,
      slip: true,
    },
  ],
  'level-below-between': [
    { code: 'level-below-between', low: 1.95, expected: 1.7, high: 1.72, fromRow: 8, toRow: 10 },
    { code: 'level-below-between', low: 1.95, expected: 1.94, high: 1.97, fromRow: 8, toRow: 10 },
  ],
  'stopped-short': [
    { code: 'stopped-short', days: 19, wanted: 30, said: true, level: null },
    { code: 'stopped-short', days: 19, wanted: 30, said: false, level: 0.2 },
  ],
  'moved-early': [{ code: 'moved-early', days: 8.2, fewest: 14, fish: long }],
  'moved-against-terms': [
    { code: 'moved-against-terms', days: 17, wanted: 30, untested: 72, signs: null },
    { code: 'moved-against-terms', days: 17, wanted: 30, untested: 72, signs: 2 },
    { code: 'moved-against-terms', days: 17, wanted: 30, untested: null, signs: 1 },
  ],
  'above-band': (['once', 'far', 'twice', 'signs', 'top unknown'] as const).map((reason) => ({
    code: 'above-band',
    level: 2.7,
    top: 2.55,
    over: 5.9,
    reason,
  })),
  'untested-stretch': [
    { code: 'untested-stretch', hours: 72, open: false },
    { code: 'untested-stretch', hours: 96, open: true },
  ],
  'untested-noted': [
    { code: 'untested-noted', rows: [4], longest: 48, openSince: null },
    { code: 'untested-noted', rows: [], longest: 48, openSince: 12 },
    { code: 'untested-noted', rows: [4, 8, 9, 10, 11, 12, 13, 14, 15, 16], longest: 60, openSince: 20 },
  ],
  'restarted-untested': [{ code: 'restarted-untested', hours: 120, longestGap: 96, days: 2 }],
  newcomer: [
    { code: 'newcomer', fish: 'royal gramma', day: 6, restart: true },
    { code: 'newcomer', fish: long, day: 6, restart: false },
  ],
  'raised-too-fast': [{ code: 'raised-too-fast', hours: 23, from: 0, level: 2.15 }],
  'dose-too-large': [
    { code: 'dose-too-large', dose: 14, rise: 0.7, most: 11.25, urgent: false },
    { code: 'dose-too-large', dose: 24, rise: 1.2, most: 22.5, urgent: true },
  ],
  'unreadable-copper': [
    { code: 'unreadable-copper', problem: unread, counts: null },
    { code: 'unreadable-copper', problem: unread, counts: { ifBelow: none, ifHeld: running } },
  ],
  'unreadable-cell': [{ code: 'unreadable-cell', kind: 'temperature', problem: { ...unread, given: '"warm"' } }],
  'row-without-time': [{ code: 'row-without-time', problem: { code: 'row-without-time', row: 12 } }],
  'bare-zero': [{ code: 'bare-zero', ifZero: none, ifUntested: complete }],
  'readings-on-limit': [{ code: 'readings-on-limit', limit: 1.95, rows: [3, 4, 5] }],
  'meter-cannot-show': [
    { code: 'meter-cannot-show', reason: 'too-coarse', low: 0.18, top: 0.21, needed: 0.2222, from: null },
    { code: 'meter-cannot-show', reason: 'too-coarse', low: 2, top: Infinity, needed: null, from: null },
    { code: 'meter-cannot-show', reason: 'limit-unread', low: 0.18, top: 0.21, needed: null, from: 0.25 },
    { code: 'meter-cannot-show', reason: 'free-test', low: 0.45, top: 0.55, needed: null, from: null },
  ],
  'strength-missing': [{ code: 'strength-missing' }],
  'own-day-count': [
    { code: 'own-day-count', written: 8, counted: 6, rows: 4 },
    { code: 'own-day-count', written: 2, counted: null, rows: 1 },
  ],
  'noted-readings': (['approximate', 'voided', 'date only'] as const).flatMap((kind) =>
    [[4], [2, 3]].map((rows) => ({ code: 'noted-readings' as const, kind, rows })),
  ),
} satisfies Samples;

const at = { severity: 'warning', when: 46082, row: 12, source: 'Practice' } as const;
const texts = Object.values(samples)
  .flat()
  .map((body) => findingText({ ...at, ...body }));

describe('findingText of the hold and the record', () => {
  it('has words of its own for each sample, ended by a point', () => {
    expect(texts.length).toBeGreaterThan(45);
    expect(new Set(texts.map(({ finding }) => finding)).size).toBe(texts.length);
    for (const { finding, why } of texts) {
      expect(finding).toMatch(/^\S.*\.$/);
      expect(why).toMatch(/^[A-Z].*\.$/);
    }
  });

  it('is short, and has no value that is none', () => {
    for (const { finding, why } of texts) {
      expect(finding.length).toBeLessThanOrEqual(280);
      expect(why.length).toBeLessThanOrEqual(200);
      expect(`${finding} ${why}`).not.toMatch(/NaN|undefined|null|Infinity|\.\.|\s{2}/);
    }
  });

  it('makes no claim that copper or the fish are past danger', () => {
    for (const { finding, why } of texts) expect(`${finding} ${why}`).not.toMatch(/\b(?:safe|clean|cured?)\b/i);
  });

  it('begins the verdict with its word', () => {
    const words = samples.verdict.map((body) => findingText({ ...at, ...body }).finding);
    expect(
      words.map((text) => /^(?:complete|running|not complete|open because of row 4)(?=: )/.exec(text)?.[0]),
    ).toEqual(['complete', 'running', 'running', 'not complete', 'not complete', 'open because of row 4']);
  });

  it('names rows, and of many the first ones', () => {
    const many = samples['untested-noted'].find(({ rows }) => rows.length > 9);
    expect(many && findingText({ ...at, ...many }).finding).toContain('rows 4, 8, 9, 10, 11, 12, 13, 14 and 2 more');
  });

  it('rounds days down: a day not yet over is none', () => {
    const finding = findingText({ ...at, code: 'moved-early', days: 13.99, fewest: 14, fish: 'tang' }).finding;
    expect(finding).toContain('13.9 days');
  });
});
