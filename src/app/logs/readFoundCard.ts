import { type Card, type CardEntry, type Cell, cardOf, message } from '../../engine/index.js';
import { type Book, FileProblem } from '../../sheet/index.js';
import { cellBlock, cellOf, writtenText } from './cellsAt.js';
import type { FoundCard } from './found.js';
import { rangeText } from './rangeText.js';
import { sheetNamed } from './sheetNamed.js';

interface ReadCard {
  readonly card: Card;
  readonly entries: readonly CardEntry[];
}

/** A found card as the engine reads it; what is wrong in it is refused with its place. */
export function readFoundCard(book: Book, found: FoundCard): ReadCard {
  const read = cardOf({ range: namesAndValues(book, found), cellOf });
  if (read.ok) return read.value;
  throw new FileProblem(`${rangeText(found.sheet, found.range)}: ${message(read.problem)}`);
}

/** Units that people write into a third column. */
const unit =
  /^(?:l|lit(?:er|re)s?|(?:us |imp )?gal(?:lons?)?|m[lg]|[mu\u00b5]g ?\/ ?l|pp[mbt]|psu|m?g ?\/ ?(?:ml|l|kg)|h(?:ou)?rs?|h|d(?:ays?)?|\u00b0?[cf]|%|sg)$/i;

function namesAndValues(book: Book, { sheet: name, range, names }: FoundCard): Cell[][] {
  const sheet = sheetNamed(book, name);
  const values = cellBlock(sheet, range);
  if (names !== null) {
    const [headings = []] = cellBlock(sheet, names);
    return headings.map((heading, column) => [heading, values[0]?.[column] ?? null]);
  }
  return values.map(([written = null, value = null], at) => {
    const beside = writtenText(sheet, range.firstRow + at, range.lastColumn + 1);
    const takesUnit = typeof written === 'string' && typeof value === 'number' && unit.test(beside);
    return [takesUnit ? `${written} (${beside})` : written, value];
  });
}
