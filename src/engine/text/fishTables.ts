import type { Tolerance, FishTolerance } from '../fish/tolerance.js';
import { columnsOf, type Table, type TableCell } from '../result/table.js';
import { sourceText } from './sourceText.js';
import { toleranceReasons } from './toleranceReasons.js';
import type { Treatment } from '../fish/treatment.js';
import { conditionWords, copperWords, remedyWords, timingWords } from './treatmentWords.js';
import type { SignRow } from '../rules/signs/signSteps.js';

export const toleranceColumns = columnsOf({ Fish: 'text', Advice: 'text', Why: 'text', Source: 'text' });

/** The most of a name that the table repeats. [letters] */
const longestName = 60;
const notTolerant = 'not listed is not the same as safe or tolerant: ask an aquatic veterinarian before any copper.';

/** What is known of fish and copper, a row per name, as TOLERANCE spills it. */
export function toleranceTable(answers: readonly FishTolerance[]): Table {
  return {
    columns: toleranceColumns,
    rows: answers.map(({ name, tolerance }) => [cut(name), ...row(tolerance)]),
  };
}

function row(tolerance: Tolerance): readonly TableCell[] {
  switch (tolerance.kind) {
    case 'listed': {
      const { advice, reason, source } = tolerance.entry;
      return [advice, `${howRead(tolerance)}${toleranceReasons[reason]}`, sourceText(source)];
    }
    case 'not listed': {
      const names = tolerance.nearest.join(', ');
      const offer = names === '' ? 'No listed name is close to it.' : `Nearest names on the list: ${names}.`;
      return ['not listed', `${sentence(notTolerant)} ${offer}`, ''];
    }
    case 'too long':
      return ['not listed', `Too long for a name: write one fish a cell, or commas between names; ${notTolerant}`, ''];
  }
}

function howRead({ entry, by, fits }: Extract<Tolerance, { readonly kind: 'listed' }>): string {
  const strictest =
    fits.length > 1 ? `Several entries fit (${fits.map(({ name }) => name).join(', ')}); the strictest counts. ` : '';
  switch (by) {
    case 'name':
      return strictest;
    case 'initial':
      return `Read as ${entry.name}. `;
    case 'words':
      return strictest === '' ? `No entry of its own, read as ${entry.name}. ` : `No entry of its own. ${strictest}`;
  }
}

function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function cut(name: string): string {
  const letters = Array.from(name);
  return letters.length <= longestName ? name : `${letters.slice(0, longestName - 1).join('')}…`;
}

export const treatmentColumns = columnsOf({
  Condition: 'text',
  Copper: 'text',
  Give: 'text',
  When: 'text',
  Source: 'text',
});

/** What helps with a condition, as TREATMENTFOR spills it. */
export function treatmentTable(treatments: readonly Treatment[]): Table {
  return {
    columns: treatmentColumns,
    rows: treatments.map((treatment) => [
      conditionWords[treatment.condition],
      copperWords[treatment.copper],
      remedyWords[treatment.give],
      timingWords[treatment.when],
      sources(treatment),
    ]),
  };
}

function sources({ sources, derived }: Treatment): string {
  return `${derived ? 'derived from ' : ''}${sources.map(sourceText).join('; ')}`;
}

export const signsColumns = columnsOf({ When: 'time', Seen: 'text', Step: 'text' });

/** Texts about the fish with the step each calls for, as SIGNS spills them. */
export function signsTable(rows: readonly SignRow[]): Table {
  return { columns: signsColumns, rows: rows.map(({ when, text, step }) => [when, text, step]) };
}
