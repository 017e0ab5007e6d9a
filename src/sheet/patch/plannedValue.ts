import type { CellValue } from '../cell/cellValue.js';
import { dayIn1904 } from '../cell/days1904.js';
import { cellContent, type CellContent } from './cellContent.js';
import type { CellWrite } from './cellWrite.js';
import { isoOfSerial } from '../book/isoDay.js';
import type { SheetContext } from './workbookContext.js';
import type { CellAt } from './sheetMap.js';

interface PlannedValue {
  /** As the file counts it. */
  readonly value: CellValue;
  readonly content: CellContent;
  /** A new style for the cell; undefined: it keeps its own. */
  readonly style?: string;
}

interface Place {
  readonly cell?: CellAt;
  readonly prefix: string;
  readonly style: string | undefined;
  /** `<f>` as it will be written. */
  readonly formula: string;
}

/** What a write means in this file: days counted as the file counts them, and a date format if the write asks for one. */
export function plannedValue(write: CellWrite, place: Place, context: SheetContext): PlannedValue {
  const { value } = write;
  const computed = place.formula !== '' || context.isFilled(write.row, write.column);
  if (typeof value !== 'number') return { value, content: cellContent(value, place.prefix, computed) };
  // Only its type makes the cell a date, so the type is kept.
  const iso = place.cell?.attributes['t'] === 'd' ? isoOfSerial(value) : undefined;
  if (iso !== undefined) return { value, content: { type: 'd', xml: `<${place.prefix}v>${iso}</${place.prefix}v>` } };
  const isDay = context.dateStyles.isDate(place.style ?? '0');
  const style =
    write.isDate === true && !isDay ? context.dateStyles.dated(place.style ?? '0', formatFor(value)) : undefined;
  const stored = context.date1904 && (isDay || style !== undefined) ? dayIn1904(value) : value;
  return {
    value: stored,
    content: cellContent(stored, place.prefix, computed),
    ...(style !== undefined && { style }),
  };
}

function formatFor(serial: number): string {
  return Number.isInteger(serial) ? 'yyyy-mm-dd' : 'yyyy-mm-dd hh:mm';
}
