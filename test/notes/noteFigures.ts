import { factsIn } from '../../src/engine/words/factsIn.js';
import type { Fact, TextContext } from '../../src/engine/words/fact.js';
import { KEEPERS, type Note } from './kinds.js';

/** What the reader made of one note. */
export interface Judged {
  readonly note: Note;
  readonly facts: readonly Fact[];
  /** Of a note that must be heard: with a right kind and polarity. Of a harmless one: taken for a present fact. */
  readonly outcome: 'heard' | 'missed' | 'false' | 'quiet';
}

/** Reads notes as they would stand in the log of their keeper. */
export function judged(notes: readonly Note[]): readonly Judged[] {
  return notes.map((note) => {
    const facts = factsIn(note.text, contextOf(note));
    return { note, facts, outcome: outcomeOf(note, facts) };
  });
}

/** An event stands in the notes. */
function contextOf({ column, keeper }: Note): TextContext {
  const ownNames = KEEPERS.find((each) => each.keeper === keeper)?.ownNames ?? [];
  return { column: column === 'event' ? 'note' : column, ownNames };
}

function outcomeOf(note: Note, facts: readonly Fact[]): Judged['outcome'] {
  if (note.mustRaise) {
    const present = note.labels.filter(({ polarity }) => polarity === 'now');
    const wanted = present.length > 0 ? present : note.labels;
    const isHeard = wanted.some((label) =>
      facts.some(({ kind, polarity }) => kind === label.kind && polarity === label.polarity),
    );
    return isHeard ? 'heard' : 'missed';
  }
  const isFalse = facts.some(
    ({ kind, polarity }) =>
      polarity === 'now' && !note.labels.some((label) => label.kind === kind && label.polarity === 'now'),
  );
  return note.severity === 'none' && isFalse ? 'false' : 'quiet';
}
