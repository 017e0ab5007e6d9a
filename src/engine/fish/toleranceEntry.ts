import type { ReferenceKey } from '../references/references.js';

/** From the strictest to the least strict: the first that fits a name counts. */
export const toleranceAdvice = ['never', 'avoid', 'caution', 'usual care'] as const;
type ToleranceAdvice = (typeof toleranceAdvice)[number];

/** Why a fish has its advice; src/engine/text/toleranceReasons.ts puts each into words. */
export type ToleranceReason =
  | 'invertebrate'
  | 'live-rock'
  | 'algae'
  | 'elasmobranch'
  | 'chimaera'
  | 'syngnathid'
  | 'syngnathid-kin'
  | 'dragonet'
  | 'puffer'
  | 'boxfish'
  | 'eel'
  | 'lionfish'
  | 'frogfish'
  | 'scaleless'
  | 'blenny'
  | 'mudskipper'
  | 'jawfish'
  | 'goby'
  | 'scaleless-goby'
  | 'dartfish'
  | 'hardy-goby'
  | 'dwarf-angelfish'
  | 'flame-angelfish'
  | 'large-angelfish'
  | 'butterflyfish'
  | 'coral-eater'
  | 'poor-eater'
  | 'tang'
  | 'delicate-tang'
  | 'wrasse'
  | 'sand-sleeper'
  | 'delicate-wrasse'
  | 'hardy-wrasse'
  | 'cleaner-wrasse'
  | 'anthias'
  | 'deep-anthias'
  | 'soapfish'
  | 'little-known'
  | 'clownfish'
  | 'chromis'
  | 'orchid-dottyback'
  | 'molly'
  | 'usual';

/** One line of the list: a fish or a group, every name it goes by, and what is known of it and copper. */
export interface ToleranceEntry {
  /** The name that answers show. */
  readonly name: string;
  /** Trade names, the shown one first. */
  readonly trade: readonly string[];
  /** Species, genera and families. */
  readonly scientific: readonly string[];
  readonly advice: ToleranceAdvice;
  readonly reason: ToleranceReason;
  readonly source: ReferenceKey;
}

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
