import type { BookSheet, CellRange } from '../../sheet/index.js';
import { type CardName, cardWordsFor } from '../../engine/index.js';
import type { FoundCard } from './found.js';
import { headingKinds } from './headingKinds.js';
import { isBlankCell, saysNumber, valueAt, writtenText } from './cellsAt.js';

interface VolumeCell {
  readonly sheet: BookSheet;
  readonly row: number;
  readonly column: number;
  readonly filled: readonly CellRange[];
  /** Rows in its column that are another card's. */
  readonly isTaken: (row: number) => boolean;
}

/** The card that a cell named as a volume belongs to, none where no form or band stands near it. */
export function cardAroundVolume(volume: VolumeCell): FoundCard[] {
  const { sheet, row, column } = volume;
  if (!saysNumber(valueAt(sheet, row, column + 1))) return [];
  const rows = new Map<CardName, number>([['volume', row]]);
  const firstRow = endOf(volume, -1, rows);
  const lastRow = endOf(volume, 1, rows);
  const [band, named] = [rows.get('band'), rows.get('system')];
  if (band === undefined) return [];
  const system = named === undefined ? null : valueAt(sheet, named, column + 1);
  const range = { firstRow, firstColumn: column, lastRow, lastColumn: column + 1 };
  const isCopy = isAnswer(sheet, band, column + 1);
  return [{ sheet: sheet.name, range, names: null, system: system === null ? null : String(system).trim(), isCopy }];
}

/** The last row in a direction that sets something; the rows on the way that are known are added. */
function endOf(volume: VolumeCell, step: 1 | -1, rows: Map<CardName, number>): number {
  const { sheet, column } = volume;
  let end = volume.row;
  for (let row = volume.row + step; row >= 0 && row < sheet.rows.length && !volume.isTaken(row); row += step) {
    const name = nameAt(volume, row);
    if (name === '') {
      // A blank row separates what the card says about the tank from what it says about the treatment.
      const next = cardWordsFor(nameAt(volume, row + step))?.name;
      if (next === undefined || volume.isTaken(row + step) || rows.has(next) || isAnswer(sheet, row + step, column + 1))
        break;
      continue;
    }
    if (headingKinds({ ...volume, row }) !== null) break;
    const known = cardWordsFor(name)?.name;
    if (known === undefined || isBlankCell(sheet, row, column + 1)) continue;
    if (rows.has(known) && (known === 'system' || isAnswer(sheet, row, column + 1))) break;
    if (!rows.has(known)) rows.set(known, row);
    end = row;
  }
  return end;
}

/** '' where no name stands: no text, or one that begins like a date. */
function nameAt({ sheet, column }: VolumeCell, row: number): string {
  const text = writtenText(sheet, row, column);
  return /^\d/.test(text) ? '' : text;
}

/** A formula below a card shows what came of it. */
function isAnswer(sheet: BookSheet, row: number, column: number): boolean {
  return sheet.rows[row]?.[column]?.formula !== undefined;
}
