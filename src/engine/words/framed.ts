import type { Clause } from './clauses.js';
import { corrected } from './corrected.js';
import {
  beginsDenials,
  continuesList,
  endsAsHearsay,
  isHearsay,
  isMistaken,
  isOwnVoice,
  isPlan,
  takesBack,
} from './frames.js';
import type { TankNamed, Tanks } from './tanks.js';

/** Where a clause stands in what the keeper tells. */
export interface Frame {
  readonly clause: Clause;
  readonly tanks: readonly TankNamed[];
  /** The tank spoken of when the clause begins. */
  readonly subject: TankNamed | null;
  readonly isHearsay: boolean;
  readonly isPlan: boolean;
  /** Goes on with a clause that leads a plan. */
  readonly leads: boolean;
  readonly isDenied: boolean;
  /** Clauses after it take it back. */
  readonly isTakenBack: boolean;
  /** The sentence says that the log's own tank has it too. */
  readonly isHereToo: boolean;
  /** What its sentence goes on to say has been done. */
  readonly rest: string;
  /** The clauses around it, itself among them. */
  readonly around: string;
}

/** So many clauses before and after one may say what it is about. */
const reach = 3;

/** Clauses with what those around them make of them. */
export function framed(written: readonly Clause[], tanks: Tanks): readonly Frame[] {
  const frames: Frame[] = [];
  const clauses = written.map((clause) => ({ ...clause, low: corrected(tanks.masked(clause).low) }));
  const named = written.map((clause) => tanks.in(clause));
  const ends = sentenceEnds(clauses);
  const hearsayTo = new Set(clauses.filter(endsAsHearsay).map(({ sentence }) => sentence));
  const here = new Set(
    clauses.filter(({ low }, at) => hasHereToo(low, named[at] ?? [])).map(({ sentence }) => sentence),
  );
  clauses.forEach((clause, at) => {
    const before = frames[at - 1];
    const goesOn = before !== undefined && before.clause.sentence === clause.sentence;
    const own = isOwnVoice(clause);
    const end = ends[at] ?? at;
    frames.push({
      clause,
      tanks: named[at] ?? [],
      subject: goesOn ? lastSubject(before) : null,
      isHearsay: isHearsay(clause) || hearsayTo.has(clause.sentence) || (goesOn && before.isHearsay && !own),
      isPlan:
        isPlan(clause) ||
        (goesOn && before.isPlan && (isLead(before.clause) || before.leads) && !own) ||
        isDoubt(clauses[at + 1], clause),
      leads: goesOn && before.isPlan && (isLead(before.clause) || before.leads),
      isDenied: goesOn && continuesList(clause) && (before.isDenied || beginsDenials(before.clause)),
      isTakenBack: isMistaken(clause) || clauses.slice(at + 1, Math.min(end + 2, at + 5)).some(takesBack),
      isHereToo: here.has(clause.sentence),
      rest: clauses
        .slice(at + 1, Math.min(end + 1, at + 4))
        .filter((later) => !isPlan(later))
        .map(({ low }) => low)
        .join(' '),
      around: clauses
        .slice(Math.max(0, at - reach), at + reach + 1)
        .map(({ low }) => low)
        .join(' '),
    });
  });
  return frames;
}

/** For each clause the last one of its sentence. */
function sentenceEnds(clauses: readonly Clause[]): readonly number[] {
  const ends: number[] = [];
  for (let at = clauses.length - 1; at >= 0; at--) {
    ends[at] = clauses[at]?.sentence === clauses[at + 1]?.sentence ? (ends[at + 1] ?? at) : at;
  }
  return ends;
}

function hasHereToo(low: string, tanks: readonly TankNamed[]): boolean {
  return tanks.some(({ own, isTarget, to }) => own && (isTarget || /^ (?:too|as well|also)\b/.test(low.slice(to))));
}

/** "…, maybe". */
function isDoubt(next: Clause | undefined, { sentence }: Clause): boolean {
  return next?.sentence === sentence && /^\s*(?:maybe|perhaps|probably|possibly)\b/.test(next.low);
}

/** "If TAN passes 1: …", "After day 30: …", "To do: …" */
function isLead({ low }: Clause): boolean {
  return /^\s*(?:if|when|once|after|before|to do|next|week plan|planned|reminder|requirement|buy|check ?list|in case|unless|will|tomorrow)\b/.test(
    low,
  );
}

function lastSubject({ tanks, subject }: Frame): TankNamed | null {
  const named = tanks.filter(({ isSource }) => !isSource);
  return named[named.length - 1] ?? subject;
}
