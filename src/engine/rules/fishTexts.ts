import type { Log } from '../log/table/log.js';
import { saidTexts } from './saidTexts.js';

/** A row that says that fish came in or went out. */
export interface FishText {
  readonly entry: number;
  readonly text: string;
}

const nobody = /^(?:0|none|no|n\/a|nil|[-–—])$/i;
const dead = /\b(?:dead|died|doa|dies|lost)\b/i;

/** The rows of a column of fish in or out that name some, and the notes that say that some came or went here. */
export function fishTexts(log: Log, column: 'fish in' | 'fish out'): readonly FishText[] {
  const cells = log.texts[column];
  const named = (entry: number): boolean => {
    const cell = cells?.[entry] ?? '';
    return cell !== '' && !nobody.test(cell) && !dead.test(cell);
  };
  const found: FishText[] = [];
  let last = -1;
  for (const { entry, column: where, text, facts } of saidTexts(log)) {
    const isCell = where === column && named(entry);
    const isNote = where === 'note' && facts.some(({ kind, polarity }) => kind === column && polarity === 'now');
    if (entry === last || (!isCell && !(isNote && !named(entry)))) continue;
    found.push({ entry, text });
    last = entry;
  }
  return found;
}
