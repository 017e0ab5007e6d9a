import type { CellWrite, CellWrites } from './cellWrite.js';
import { prefixOf } from '../xml/elementAt.js';
import { newCell } from './newCell.js';
import type { RowChange } from './rowChange.js';
import type { SheetContext } from './workbookContext.js';
import type { SheetMap } from './sheetMap.js';
import type { Splice } from './splice.js';

/** New rows, each before the first row with a higher number. */
export function newRows(xml: string, writes: CellWrites, sheet: { map: SheetMap; context: SheetContext }): RowChange {
  const { map, context } = sheet;
  const { data } = map;
  const prefix = prefixOf(data);
  const inserted: CellWrite[] = [];
  const splices: Splice[] = [];
  const higher = rowsAbove(map);
  for (const [row, ofRow] of writes) {
    const cells = [...ofRow.values()].flatMap((write) => {
      const text = newCell(write, { row: undefined, map, context });
      if (text !== '') inserted.push(write);
      return text;
    });
    const text = cells.join('');
    if (text === '') continue;
    const at = higher(row) ?? data.contentTo;
    splices.push({ from: at, to: at, text: `<${prefix}row r="${row + 1}">${text}</${prefix}row>` });
  }
  const otherFormulas = inserted.some(({ formula }) => typeof formula === 'string');
  const tag = xml.slice(data.from, data.tagTo);
  if (!tag.endsWith('/>') || splices.length === 0) return { splices, inserted, otherFormulas };
  const rows = splices.map(({ text }) => text).join('');
  const whole = `${tag.replace(/\s*\/>$/, '>')}${rows}</${data.name}>`;
  return { splices: [{ from: data.from, to: data.to, text: whole }], inserted, otherFormulas };
}

/** Gives, when asked for ascending numbers, where the first row with a higher number begins. */
function rowsAbove({ rowNumbers, rowStarts }: SheetMap): (row: number) => number | undefined {
  let next = 0;
  return (row) => {
    while (next < rowNumbers.length && (rowNumbers[next] ?? 0) < row) next += 1;
    return rowStarts[next];
  };
}
