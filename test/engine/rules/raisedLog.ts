import type { Finder } from '../../../src/engine/rules/rule.js';
import { treatmentFrom } from './treatmentFrom.js';

/** 200 L, chelated, a solution of 10 mg/mL: 1 mL raises by 0.05 mg/L. */
export const chelatedCard = `
  volume | 200 L
  form | chelated
  strength | 10 mg/mL
  meter accuracy | 0.05
`;

/** Rows 1 to 8: the headings, a raise to 2.25 mg/L, and two more days of the hold. Days to come stand from row 9 on. */
export const raisedLog = `
  when             | Cu   | dose mL | WC L | ATO L | note
  2026-03-01 08:00 | 0    | 11.2    |      |       |
  2026-03-02 08:00 | 0.56 | 11.2    |      |       |
  2026-03-03 08:00 | 1.12 | 11.3    |      |       |
  2026-03-04 08:00 | 1.68 | 11.3    |      |       |
  2026-03-05 08:00 | 2.25 |         |      |       |
  2026-03-06 08:00 | 2.24 |         |      |       |
  2026-03-07 08:00 | 2.25 |         |      |       |
`;

/** What one rule finds in a log: code, severity and row of each. */
export function foundBy(rule: Finder, log: string, card: string = chelatedCard): string[] {
  return findingsBy(rule, log, card).map(({ code, severity, row }) => `${severity} ${row ?? '-'} ${code}`);
}

export function findingsBy(rule: Finder, log: string, card: string = chelatedCard): ReturnType<Finder['find']> {
  return rule.find(treatmentFrom(log, card), new Set());
}
