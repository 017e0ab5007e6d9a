import { dimensions } from '../../dimensions/dimensions.js';
import type { ValueKind } from '../../result/problem.js';

interface Wanted {
  /** What the value should have been. */
  readonly noun: string;
  /** How to write one. */
  readonly write: string;
}

/** What each kind of value is called, and how to write it. */
export const whatToWrite: Readonly<Record<ValueKind, Wanted>> = {
  ...dimensions,
  whole: { noun: 'a whole number', write: 'one, like 5' },
  percent: { noun: 'a percentage', write: 'one like 30 or "30%"' },
  change: { noun: 'a water change', write: 'litres or a share, like 50, "50 L" or "25%"' },
  choice: { noun: 'a choice', write: 'one of the words that the function lists' },
  text: { noun: 'text', write: 'it in words' },
  fish: { noun: 'a name of a fish', write: 'a name, like "yellow tang", or leave it empty' },
  'fish count': { noun: 'a number of fish', write: 'one like 3, "3 tangs" or "1 DOA", or leave it empty' },
  condition: { noun: 'a condition', write: 'one like "white spot", or "unknown"' },
  time: { noun: 'a time', write: '"2026-03-01 08:00", or use a date cell' },
  band: { noun: 'a band', write: '"sulfate", "amine", "chelated", a low limit, or give two cells, low and high' },
  form: { noun: 'a form of copper', write: '"sulfate", "amine" or "chelated"' },
  reading: { noun: 'a reading', write: '2.05, "2.05 ppm" or "<0.05"' },
};
