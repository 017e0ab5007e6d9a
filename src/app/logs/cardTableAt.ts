import { type CardName, cardWordsFor } from '../../engine/index.js';
import type { BookSheet } from '../../sheet/index.js';
import type { FoundCard } from './found.js';
import { headingKinds } from './headingKinds.js';
import { isBlankCell, saysNumber, valueAt, writtenText } from './cellsAt.js';

/**
 * The cards of a table whose heading row names a volume in the given cell, a system and a form or band beside it; a row
 * each, down to the first that is blank. None if it is not such a table.
 */
export function cardTableAt(sheet: BookSheet, row: number, column: number): FoundCard[] {
  const [firstColumn, lastColumn] = [edge(sheet, row, column, -1), edge(sheet, row, column, 1)];
  const columns = new Map<CardName, number>();
  for (let at = firstColumn; at <= lastColumn; at++) {
    const name = cardWordsFor(writtenText(sheet, row, at))?.name;
    if (name !== undefined && !columns.has(name)) columns.set(name, at);
  }
  const [system, band] = [columns.get('system'), columns.get('band')];
  if (system === undefined || band === undefined) return [];
  const names = { firstRow: row, firstColumn, lastRow: row, lastColumn };
  const cards: FoundCard[] = [];
  for (let at = row + 1; at < sheet.rows.length; at++) {
    const range = { firstRow: at, firstColumn, lastRow: at, lastColumn };
    const isBlank = Array.from({ length: lastColumn - firstColumn + 1 }, (_, i) => firstColumn + i).every((each) =>
      isBlankCell(sheet, at, each),
    );
    if (isBlank) break;
    const name = valueAt(sheet, at, system);
    const isCopy = sheet.rows[at]?.[band]?.formula !== undefined;
    if (name !== null) cards.push({ sheet: sheet.name, range, names, system: String(name).trim(), isCopy });
  }
  const [first] = cards;
  return first !== undefined && isSetting(sheet, first.range.firstRow, column, band) ? cards : [];
}

/** The headings of a log may name a volume and a system too; there, its tests stand below the copper and not a form. */
function isSetting(sheet: BookSheet, row: number, volume: number, band: number): boolean {
  if (!saysNumber(valueAt(sheet, row, volume)) || isBlankCell(sheet, row, band)) return false;
  return headingKinds({ sheet, row: row - 1, filled: [] }) === null || !saysNumber(valueAt(sheet, row, band));
}

function edge(sheet: BookSheet, row: number, column: number, step: 1 | -1): number {
  let at = column;
  while (at + step >= 0 && writtenText(sheet, row, at + step) !== '') at += step;
  return at;
}
