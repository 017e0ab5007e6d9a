import { cardOf, message, type Card, type CardEntry } from '../../engine/index.js';
import { type Book, type CellValue, FileProblem } from '../../sheet/index.js';
import { cellBlock } from './cellBlock.js';
import { engineCell } from './engineCell.js';
import type { FoundCard } from './foundCard.js';
import { rangeText } from './rangeText.js';
import { sheetNamed } from './sheetNamed.js';
import { writtenText } from './writtenText.js';

interface ReadCard {
  readonly card: Card;
  readonly entries: readonly CardEntry[];
}

/** A found card as the engine reads it; what is wrong in it is refused with its place. */
export function readFoundCard(book: Book, found: FoundCard): ReadCard {
  const cellOf = (raw: unknown) => engineCell(raw as CellValue);
  const read = cardOf({ range: namesAndValues(book, found), cellOf });
  if (read.ok) return read.value;
  throw new FileProblem(`${rangeText(found.sheet, found.range)}: ${message(read.problem)}`);
}

/** Units that people write into a third column. */
const unit =
  /^(?:l|lit(?:er|re)s?|(?:us |imp )?gal(?:lons?)?|m[lg]|[mu\u00b5]g ?\/ ?l|pp[mbt]|psu|m?g ?\/ ?(?:ml|l|kg)|h(?:ou)?rs?|h|d(?:ays?)?|\u00b0?[cf]|%|sg)$/i;

function namesAndValues(book: Book, { sheet: name, range, names }: FoundCard): CellValue[][] {
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
