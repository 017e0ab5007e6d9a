import type { Written } from './bookOf.js';

/** 2026-03-01. */
export const firstDay = 46082;

/** A log of so many days, tested morning and evening, with its heading row. */
export function logRows(
  days: number,
  level = 2.2,
  headings: readonly string[] = ['Date', 'Copper mg/L', 'Note'],
): Written[][] {
  const rows = Array.from({ length: 2 * days }, (_, at): Written[] => [
    firstDay + at / 2 + 1 / 3,
    level,
    at === 0 ? 'start' : null,
  ]);
  return [[...headings], ...rows];
}

/** A log of several systems. */
export function sharedRows(systems: readonly string[], days: number): Written[][] {
  const rows = Array.from({ length: days }, (_, day) =>
    systems.map((system): Written[] => [system, firstDay + day + 1 / 3, 2.2, null]),
  ).flat();
  return [['System', 'When', 'Cu ppm', 'Dose mL'], ...rows];
}

export const cardRows: readonly (readonly Written[])[] = [
  ['Volume', 200],
  ['Form', 'chelated'],
  ['Strength', '10 mg/mL'],
  ['Days', 30],
];

export function systemCard(system: string): Written[][] {
  return [['System', system], ...cardRows.map((row) => [...row])];
}

export const cardTable: readonly (readonly Written[])[] = [
  ['System', 'Volume L', 'Form', 'Strength mg/mL'],
  ['A1', 640, 'chelated', 20],
  ['A2', 300, 'amine', 5],
  ['B1', 240, 'chelated', 20],
];
