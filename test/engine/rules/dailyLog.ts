import { isoFromSerial } from '../../../src/base/isoFromSerial.js';

/** 2026-03-01 08:00 */
export const firstTest = 46082 + 8 / 24;

/**
 * Lines of a log, a reading a day from 2026-03-01 08:00: what is written after the time, `2.25` or `2.25 | note`. Under a
 * heading line the first of them is row 2.
 */
export function dailyLog(heading: string, cells: readonly (string | number)[], hours = 24): string {
  const lines = cells.map((cell, index) => `${isoFromSerial(firstTest + (index * hours) / 24)} | ${cell}`);
  return [heading, ...lines].join('\n');
}

/** The same cell so many times. */
export function days(count: number, cell: string | number = 2.25): (string | number)[] {
  return Array.from({ length: count }, () => cell);
}
