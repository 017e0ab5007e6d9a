import { anyTextFits } from '../log/table/anyTextFits.js';
import type { Log } from '../log/table/log.js';

/** A row that says that fish came in or went out. */
export interface FishText {
  readonly entry: number;
  readonly text: string;
}

const nobody = /^(?:0|none|no|n\/a|nil|[-–—])$/i;
const dead = /\b(?:dead|died|doa|dies|lost)\b/i;

/** The rows of a column of fish in or out that name some, and the notes that say so in these words. */
export function fishTexts(log: Log, column: 'fish in' | 'fish out', notes: RegExp): readonly FishText[] {
  const cells = log.texts[column];
  const written = anyTextFits(log.texts.note, (text) => notes.test(text)) ? log.texts.note : null;
  const found: FishText[] = [];
  if (cells === null && written === null) return found;
  for (let entry = 0; entry < log.count; entry++) {
    const cell = cells?.[entry] ?? '';
    if (cell !== '' && !nobody.test(cell) && !dead.test(cell)) {
      found.push({ entry, text: cell });
      continue;
    }
    const note = written?.[entry] ?? '';
    if (note !== '' && notes.test(note)) found.push({ entry, text: note });
  }
  return found;
}
