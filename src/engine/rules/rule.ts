import type { ToleranceReason } from '../fish/toleranceEntry.js';
import type { ColumnKind } from '../log/headings/columnKinds.js';
import type { ReferenceKey } from '../references/references.js';
import type { Problem } from '../result/problem.js';
import type { Treatment } from './treatment.js';

export type Severity = 'verdict' | 'danger' | 'warning' | 'note';

/** Where a finding stands and where its rule comes from. */
export interface FindingAt {
  readonly severity: Severity;
  /** null: not of one moment. [serial day] */
  readonly when: number | null;
  /** The n-th row of the log's range; null: not of one row. */
  readonly row: number | null;
  readonly source: ReferenceKey;
}

/** A finding's code, with the numbers that its sentence needs. */
export type Found<Body> = FindingAt & Body;

/** A finding in words. */
export interface FindingWords {
  /** One sentence with the numbers of this row and, where it helps, what to do next. */
  readonly finding: string;
  /** The rule in a sentence. */
  readonly why: string;
}

/** Sentences that rules repeat and do not write themselves. */
export interface Spoken {
  problem(problem: Problem): string;
  toleranceReason(reason: ToleranceReason): string;
}

/** A small log and what the rule alone finds in it. */
interface Example {
  /** Headings and rows, a line each, cells separated by |; `daily` writes one with a reading a day. */
  readonly log: string;
  /** Written like the log, in two columns; a chelated tank of 200 L with a solution of 10 mg/mL where none is given. */
  readonly card?: string;
  /** Severity, row (or -) and code of each finding, such as "danger 6 hold-broken"; none: the rule is silent. */
  readonly finds: readonly string[];
}

/** One rule of a careful keeper: what it looks for, as data, and the function that finds it. */
export interface Rule<Body extends { readonly code: string }> {
  /** What it looks for, in a line. */
  readonly about: string;
  /** The codes of its findings, each with the severities it may have. */
  readonly codes: { readonly [C in Body['code']]: readonly Severity[] };
  readonly sources: readonly ReferenceKey[];
  /** Columns without which it finds nothing; of several in one place any will do. */
  readonly needs: readonly (readonly ColumnKind[])[];
  /** Rules that name causes: what merely follows from a cause that one of them has named is not found again. */
  readonly yieldsTo: readonly Finder[];
  /** @param named rows for which a rule it yields to has named a cause */
  readonly find: (treatment: Treatment, named: ReadonlySet<number>) => readonly Found<Body>[];
  words(finding: Found<Body>, spoken: Spoken): FindingWords;
  /** At least one that raises each code, and one in which it is silent. */
  readonly examples: readonly Example[];
}

/** As much of a rule as others need to run it. */
export interface Finder {
  readonly yieldsTo: readonly Finder[];
  readonly find: (
    treatment: Treatment,
    named: ReadonlySet<number>,
  ) => readonly (FindingAt & { readonly code: string })[];
}

/** A log with a row a day at 08:00 from 2026-03-01 on: what stands after the time in each. Its first row is row 2. */
export function daily(heading: string, ...cells: readonly (string | number)[]): string {
  const lines = cells.map((cell, day) => {
    const [month, date] = day < 31 ? [3, day + 1] : [4, day - 30];
    return `2026-0${month}-${String(date).padStart(2, '0')} 08:00|${cell}`;
  });
  return [`When|${heading}`, ...lines].join('\n');
}
