/**
 * `npm run note-figures`: of labelled notes that must be heard, how many the reader of words hears; of harmless ones, how
 * many it takes for a present fact. By kind and by keeper, with those that went wrong. Notes
 * set aside, in test/notes/asideNotes.ts, are read too where that file is there.
 */
import { judged, type Judged } from './noteFigures.js';
import type { Note } from './kinds.js';
import { OPEN_NOTES } from './openNotes.js';

declare const require: {
  context(folder: string, deep: boolean, names: RegExp): { keys(): string[]; (key: string): Record<string, unknown> };
};

function say(line: string): void {
  process.stdout.write(`${line}\n`);
}

function percent(part: number, whole: number): string {
  return whole === 0 ? '-' : `${((100 * part) / whole).toFixed(1)} %`;
}

function sayGroups(name: string, all: readonly Judged[], groupOf: (each: Judged) => string): void {
  say(`${name.padEnd(34)}  must  heard  harmless  false`);
  const groups = [...new Set(all.map(groupOf))].sort((a, b) => a.localeCompare(b, 'en', { numeric: true }));
  for (const group of groups) {
    const of = all.filter((each) => groupOf(each) === group);
    const [must, heard, harmless, mistaken] = counts(of);
    const cells = [String(must).padStart(6), String(heard).padStart(7), String(harmless).padStart(10)];
    say(`${group.padEnd(34)}${cells.join('')}${String(mistaken).padStart(7)}`);
  }
}

function counts(all: readonly Judged[]): readonly [number, number, number, number] {
  const of = (fits: (each: Judged) => boolean): number => all.filter(fits).length;
  return [
    of(({ note }) => note.mustRaise),
    of(({ outcome }) => outcome === 'heard'),
    of(({ note }) => note.severity === 'none'),
    of(({ outcome }) => outcome === 'false'),
  ];
}

function sayFigures(title: string, notes: readonly Note[]): void {
  const all = judged(notes);
  const [must, heard, harmless, mistaken] = counts(all);
  say(`\n${title}: ${notes.length} notes`);
  sayGroups('kind', all, ({ note }) => note.labels[0]?.kind ?? 'nothing');
  sayGroups('keeper', all, ({ note }) => String(note.keeper));
  for (const { note, facts, outcome } of all) {
    if (outcome !== 'missed' && outcome !== 'false') continue;
    say(`    ${outcome}: ${note.id} "${note.text}"`);
    say(`        read as ${facts.map(({ kind, polarity }) => `${kind} (${polarity})`).join('; ') || 'nothing'}`);
  }
  say(`${title}: ${heard} of ${must} heard (${percent(heard, must)}), ${mistaken} of ${harmless} harmless ones taken`);
  say(`    for a present fact (${percent(mistaken, harmless)})`);
}

sayFigures('open notes', OPEN_NOTES);
const files = require.context('.', false, /asideNotes\.ts$/);
for (const key of files.keys()) {
  for (const notes of Object.values(files(key))) sayFigures('notes set aside', notes as readonly Note[]);
}
