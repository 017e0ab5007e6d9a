import { auditFindings } from '../../../../src/engine/audit/auditFindings.js';
import { copperStates, type Log } from '../../../../src/engine/log/table/log.js';
import type { Finding } from '../../../../src/engine/rules/finding.js';
import type { Treatment } from '../../../../src/engine/rules/treatment.js';

/** What a finding may speak against, as DONOW's rows call it. */
type Advice = 'dose' | 'change water' | 'take copper out' | 'move fish';

/** A danger or warning that is open, by AUDIT's own row and the rows of the log. */
export interface Open {
  readonly finding: Finding;
  readonly against: readonly Advice[];
  /** Rows of DONOW that answer it. */
  readonly answers: RegExp;
}

interface Law {
  /** Without it, 48 h from its row. */
  readonly open?: (finding: Finding, rows: Rows) => boolean;
  readonly against: (finding: Finding, rows: Rows) => readonly Advice[];
  readonly answers: RegExp;
}

/** What the rows of a log say up to the moment, read apart from the judgement. */
export class Rows {
  constructor(
    readonly log: Log,
    readonly now: number,
  ) {}

  lastWith(has: (index: number) => boolean): number {
    for (let index = this.log.count - 1; index >= 0; index--) if (has(index)) return index;
    return -1;
  }

  get lastReading(): number {
    return this.lastWith((index) => this.log.copper[index] === copperStates.reading);
  }

  isLastReading({ row }: Finding): boolean {
    return row !== null && this.log.row[this.lastReading] === row;
  }

  isLast(kind: 'ammonia' | 'salinity', { row }: Finding): boolean {
    return this.log.row[this.lastWith((index) => (this.log.numbers[kind]?.[index] ?? NaN) >= 0)] === row;
  }

  testedAfter(kind: 'copper' | 'ammonia', when: number): boolean {
    const last =
      kind === 'copper' ? this.lastReading : this.lastWith((index) => (this.log.numbers.ammonia?.[index] ?? NaN) >= 0);
    return (this.log.when[last] ?? -Infinity) > when + 1e-6;
  }

  hours({ when }: Finding): number {
    return when === null ? 0 : (this.now - when) * 24;
  }
}

const dose = (): readonly Advice[] => ['dose'];
const nothing = (): readonly Advice[] => [];
const end = (): readonly Advice[] => ['take copper out', 'move fish'];
const tests = /^test copper/;

function untested(finding: Finding, rows: Rows): boolean {
  return rows.hours(finding) < 48 && !rows.testedAfter('copper', finding.when ?? NaN);
}

const slip: Law = {
  open: (finding, rows) => rows.isLastReading(finding),
  against: () => ['dose', 'take copper out', 'move fish'],
  answers: /^correct row|^test copper again/,
};

/** The table of findings in the contract, written down again: how long each is open, and against what it speaks. */
const laws: { readonly [C in Finding['code']]?: Law } = {
  'above-band': {
    open: (finding, { log, lastReading }) =>
      finding.code === 'above-band' && (log.low[lastReading] ?? NaN) > finding.top,
    against: dose,
    answers: /^change water|^lower copper|^test copper/,
  },
  'conditioner-noted': {
    open: (finding, rows) => rows.hours(finding) < 24,
    against: dose,
    answers: /^look at the fish|^move out|^change water/,
  },
  'copper-intolerant-fish': {
    open: (_, { log }) => !(log.texts['fish out'] ?? []).some((text) => text !== ''),
    against: dose,
    answers: /^move out/,
  },
  deaths: {
    against: ({ when }, rows) =>
      rows.testedAfter('copper', when ?? NaN) && rows.testedAfter('ammonia', when ?? NaN) ? end() : ['dose', ...end()],
    answers: /^test copper, ammonia and oxygen|^call a vet/,
  },
  'double-dose': { open: untested, against: dose, answers: /^test copper|^change water/ },
  'dose-untested': { open: untested, against: dose, answers: tests },
  'unmatched-change': { open: untested, against: dose, answers: tests },
  'level-below-between': { open: untested, against: end, answers: tests },
  'hold-broken': { against: end, answers: /^dose|^test copper|^raise slowly|^thin the solution|^no copper/ },
  'stopped-short': { against: end, answers: /^dose|^test copper/ },
  'moved-early': { against: nothing, answers: /^look at the fish|^move out|^test copper, ammonia/ },
  newcomer: { open: (finding, rows) => rows.hours(finding) < 24, against: dose, answers: /^look at the fish/ },
  'low-salinity': {
    open: (finding, rows) => rows.isLast('salinity', finding),
    against: dose,
    answers: /^no copper/,
  },
  'low-salinity-treatment': { against: dose, answers: /^no copper/ },
  'said-in-words': {
    against: ({ severity }) => (severity === 'danger' ? ['dose'] : []),
    answers:
      /^switch off|^give air|^move out|^no copper|^test copper|^test ammonia|^check the bottle|^compare the kits|^change water|^treat for|^look at the fish/,
  },
  'second-signs': { against: () => ['dose', 'move fish'], answers: /^move out|^stop copper/ },
  'unionised-ammonia': {
    open: (finding, rows) => rows.isLast('ammonia', finding),
    against: dose,
    answers: /^change water/,
  },
  'unit-slip': slip,
  'swapped-systems': slip,
  'swapped-rows': { ...slip, against: end },
  'unexplained-reading': slip,
  'wrong-form': {
    open: (_, rows) => (rows.now - (rows.log.when[rows.lastReading] ?? NaN)) * 24 < 48,
    against: (finding) =>
      finding.code === 'wrong-form' && (finding.side === 'above' || finding.fits !== null)
        ? ['dose', 'change water', ...end()]
        : [],
    answers: /^check the card/,
  },
  'unreadable-copper': { against: () => ['dose', 'change water', ...end()], answers: /^correct row/ },
  'unreadable-cell': { against: () => ['dose', 'change water'], answers: /^correct row/ },
};

/** The dangers and warnings of AUDIT at a moment that are open by that table, and the ones it does not list. */
export function openByAudit(treatment: Treatment): readonly Open[] {
  const rows = new Rows(treatment.log, treatment.now);
  return auditFindings(treatment).flatMap((finding) => {
    if (finding.severity !== 'danger' && finding.severity !== 'warning') return [];
    const law = laws[finding.code];
    if (law === undefined) {
      if (finding.severity === 'danger') throw new Error(`no law for ${finding.code}`);
      return [];
    }
    const isOpen = law.open?.(finding, rows) ?? rows.hours(finding) < 48;
    return isOpen ? [{ finding, against: law.against(finding, rows), answers: law.answers }] : [];
  });
}
