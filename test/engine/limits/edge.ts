import { auditFindings } from '../../../src/engine/audit/auditFindings.js';
import { doNow } from '../../../src/engine/judgement/doNow.js';
import { stateOf } from '../../../src/engine/judgement/state.js';
import type { Task } from '../../../src/engine/judgement/task.js';
import { readyGates } from '../../../src/engine/audit/readyGates.js';
import type { Gate, GateName } from '../../../src/engine/audit/gates/gate.js';
import type * as limits from '../../../src/engine/limits/limits.js';
import { plan } from '../../../src/engine/plan/plan.js';
import type { PlanStep, PlanTerms } from '../../../src/engine/plan/planStep.js';
import type { Finding } from '../../../src/engine/rules/finding.js';
import type { Treatment } from '../../../src/engine/rules/treatment.js';
import { findingText } from '../../../src/engine/text/findingText.js';
import { planTable } from '../../../src/engine/text/planTable.js';
import { days, serialDay } from '../../../src/engine/units/quantity.js';
import { treatmentFrom } from '../rules/treatmentFrom.js';

/** An answer that is another one on either side of a limit, read at one place. */
interface Step {
  readonly where: string;
  /** The answer at a value of the limit's quantity. */
  readonly answer: (value: number) => unknown;
  /** The smallest step of the unit. */
  readonly step: number;
  /** Which side the limit itself is on; not said where binary noise decides. */
  readonly with?: 'below' | 'above';
}

/** An answer that flips at a limit which can only be measured where it flips: standard deviations. */
interface Flip {
  readonly where: string;
  readonly answer: (value: number) => boolean;
  /** Between two values of what is varied. */
  readonly between: readonly [number, number];
  /** The limit's own quantity there. */
  readonly measured: (value: number) => number;
}

/** An answer that is the limit itself. */
interface Gives {
  readonly where: string;
  readonly gives: () => number;
}

export type Edge = Step | Flip | Gives;
export type Edges<N extends keyof typeof limits = keyof typeof limits> = Readonly<Record<N, readonly Edge[]>>;

/** 2026-03-01, a whole number: what is a day or half a day later is exact. */
export const start = 46082;
/** The moment so many hours, or days, after it. */
export const atHour = (hours: number): number => start + hours / 24;
export const atDay = (day: number): number => start + day;

export const chelated = 'volume|200 L\nform|chelated\nstrength|10 mg/mL\nmeter accuracy|0.05';
export const noStrength = 'volume|200 L\nform|chelated\nmeter accuracy|0.05';
export const sulfate = 'volume|200 L\nform|sulfate';

export type Row = readonly (number | string)[];

/** A log: its headings after the time, and rows that begin with theirs. */
export const log = (heading: string, ...rows: readonly Row[]): string =>
  [`When|${heading}`, ...rows.map((row) => row.join('|'))].join('\n');

/** A row a day, each with the same cells, from one day of the log to another. */
export const rowsDaily = (from: number, to: number, ...cells: readonly (number | string)[]): Row[] =>
  Array.from({ length: to - from + 1 }, (_, day) => [atDay(from + day), ...cells]);

export const treated = (text: string, card = chelated, asOf?: number): Treatment => treatmentFrom(text, card, asOf);

/** Severity, row and code of what the audit finds under some codes. */
export function audited(treatment: Treatment, ...codes: readonly Finding['code'][]): string {
  return auditFindings(treatment)
    .filter(({ code }) => codes.includes(code))
    .map(({ severity, row, code }) => `${severity} ${row ?? '-'} ${code}`)
    .join('; ');
}

export function findingOf<C extends Finding['code']>(treatment: Treatment, wanted: C): Extract<Finding, { code: C }> {
  const found = auditFindings(treatment).find((each): each is Extract<Finding, { code: C }> => each.code === wanted);
  if (found === undefined) throw new Error(`no ${wanted}`);
  return found;
}

/** The first number in a sentence of a finding behind some words. */
export function numberIn(sentence: string, words: RegExp): number {
  const match = words.exec(sentence);
  if (match === null) throw new Error(`"${sentence}" has no ${words.source}`);
  return Number(match[1]);
}

export const wordsOf = (finding: Finding): string => `${findingText(finding).finding} ${findingText(finding).why}`;

export const gateOf = (treatment: Treatment, name: GateName): Gate => {
  const gate = readyGates(treatment).gates.find((each) => each.name === name);
  if (gate === undefined) throw new Error(`no gate ${name}`);
  return gate;
};

export const tasks = (treatment: Treatment): readonly Task[] => doNow(stateOf(treatment));
export const taskKinds = (treatment: Treatment): string =>
  tasks(treatment)
    .map(({ act }) => act)
    .join(', ');

export const planned = (terms: Partial<PlanTerms> = {}): readonly PlanStep[] =>
  plan({ start: serialDay(start), form: 'chelated', days: days(30), pace: 'gradual', medicines: [], ...terms });

type WithCode<S, C> = S extends { readonly code: infer K } ? (C extends K ? S : never) : never;

export function stepOf<C extends PlanStep['code']>(steps: readonly PlanStep[], code: C): WithCode<PlanStep, C> {
  const found = steps.find((step): step is WithCode<PlanStep, C> => step.code === code);
  if (found === undefined) throw new Error(`no ${code}`);
  return found;
}

/** What to do and why in the plan's rows, in one text. */
export const planWords = (terms: Partial<PlanTerms> = {}): string =>
  planTable(planned(terms))
    .rows.map((row) => row.join(' '))
    .join('\n');
