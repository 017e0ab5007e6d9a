import type { Tolerance, FishTolerance } from '../fish/tolerance.js';
import { columnsOf, type Table, type TableCell } from '../result/table.js';
import { sourceText } from './sourceText.js';
import { toleranceReasons } from './toleranceReasons.js';

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
      const offer = names === '' ? 'No listed name is near it.' : `Nearest names on the list: ${names}.`;
      return ['not listed', `${sentence(notTolerant)} ${offer}`, ''];
    }
    case 'too long':
      return ['not listed', `Too long for a name: write one fish a cell, or commas between names; ${notTolerant}`, ''];
  }
}

function howRead({ entry, by, fits }: Extract<Tolerance, { readonly kind: 'listed' }>): string {
  const strictest =
    fits.length > 1 ? `Several entries fit (${fits.map(({ name }) => name).join(', ')}), the strictest counts. ` : '';
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
