import type { ToleranceEntry } from './toleranceEntry.js';

/**
 * The lines of a list that share advice, reason and source. A line is `trade names / scientific names`, commas between;
 * the first trade name is the one shown.
 */
export function toleranceEntries(
  shared: Pick<ToleranceEntry, 'advice' | 'reason' | 'source'>,
  lines: readonly string[],
): readonly ToleranceEntry[] {
  return lines.map((line) => {
    const [trade = '', scientific = ''] = line.split('/');
    const names = commaList(trade);
    return { name: names[0] ?? '', trade: names, scientific: commaList(scientific), ...shared };
  });
}

function commaList(text: string): readonly string[] {
  return text
    .split(',')
    .map((name) => name.trim())
    .filter((name) => name !== '');
}
