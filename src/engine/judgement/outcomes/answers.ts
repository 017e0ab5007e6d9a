import * as limits from '../../limits/limits.js';
import type { Finding } from '../../rules/finding.js';
import type { Treatment } from '../../rules/treatment.js';
import { hoursPerDay } from '../../units/quantity.js';
import type { LastTest } from '../lastTest.js';
import type { Act } from '../task.js';
import { isTestedSince } from '../waterSince.js';

// What several findings have in common: the rows that answer them, and how long they are open.

export const copperTests: readonly Act[] = ['test copper', 'test copper again', 'test copper, ammonia and oxygen'];
export const tested = (): readonly Act[] => copperTests;
export const looked = (): readonly Act[] => ['look at the fish', 'move out', 'test copper, ammonia and oxygen'];
export const corrected = ({ row }: Finding): readonly Act[] => [`correct row ${row ?? 0}`];

export const always = (): boolean => true;

export function untilTested({ when }: Finding, treatment: Treatment): boolean {
  const at = when ?? NaN;
  const isRecent = treatment.now - at <= limits.eventOpen.value / hoursPerDay;
  return isRecent && !isTestedSince(treatment, at, 'copper');
}

/** A fault of the row of the last test or after it stands in the way of what is computed; an older one is only said. */
export function isOfLastTest({ row, when }: Finding, { now }: Treatment, last: LastTest | null): boolean {
  if (row === last?.row) return true;
  const at = when ?? NaN;
  if (Number.isNaN(at)) return (row ?? 0) > (last?.row ?? 0);
  return now - at <= limits.eventOpen.value / hoursPerDay;
}
