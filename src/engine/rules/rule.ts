import type { Finding } from './finding.js';
import type { Treatment } from './treatment.js';

/**
 * One rule of a careful keeper. `named` holds the rows for which an earlier rule has already named a cause: what merely
 * follows from that is not found again.
 */
export type Rule = (treatment: Treatment, named: ReadonlySet<number>) => readonly Finding[];
