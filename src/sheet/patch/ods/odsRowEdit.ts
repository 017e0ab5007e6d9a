import type { OutsideNames } from '../../formula/outsideFunctions.js';
import type { CellWrite } from '../cellWrite.js';
import type { Splice } from '../splice.js';
import { tagWith } from '../tagWith.js';
import { odsCellEdit } from './odsCellEdit.js';
import type { OdsCellAt, OdsMap, OdsRowAt, OdsSheetMap } from './odsMap.js';

export interface OdsContext {
  readonly map: OdsMap;
  readonly sheet: OdsSheetMap;
  /** The functions whose names an open formula may hold as they are. */
  readonly outside: OutsideNames;
}

/** The changes in the cells of a row; none where it already holds all values. */
export function odsRowEdit(
  xml: string,
  row: OdsRowAt,
  writes: ReadonlyMap<number, CellWrite>,
  context: OdsContext,
): Splice[] {
  const splices: Splice[] = [];
  const left = new Map(writes);
  for (const cell of row.cells) {
    const edits = new Map<number, string>();
    for (const [column, write] of left) {
      if (column >= cell.column + cell.repeated) break;
      left.delete(column);
      const edit = odsCellEdit(xml, cell, write, { ...context, style: styleOf(cell, row, column, context) });
      if (edit !== undefined) edits.set(column - cell.column, edit);
    }
    if (edits.size > 0) splices.push({ from: cell.from, to: cell.to, text: split(xml, cell, edits, context) });
  }
  const added = cellsBehind(row, left, context);
  if (added !== '') splices.push({ from: row.cellsTo, to: row.cellsTo, text: added });
  return splices;
}

/** A run of equal cells, some of which become different. */
function split(xml: string, cell: OdsCellAt, edits: ReadonlyMap<number, string>, { map }: OdsContext): string {
  const name = map.naming.inFile('table:number-columns-repeated');
  const equal = (count: number): string => {
    if (count === 0) return '';
    const tag = tagWith(xml.slice(cell.from, cell.tagTo), { [name]: count === 1 ? null : String(count) });
    return tag + xml.slice(cell.tagTo, cell.to);
  };
  let text = '';
  let done = 0;
  for (const [index, edit] of edits) {
    text += equal(index - done) + edit;
    done = index + 1;
  }
  return text + equal(cell.repeated - done);
}

/** New cells to the right of the last one of a row. */
function cellsBehind(row: OdsRowAt, writes: ReadonlyMap<number, CellWrite>, context: OdsContext): string {
  const name = context.map.naming.inFile('table:table-cell');
  const blank = `<${name}/>`;
  const repeated = context.map.naming.inFile('table:number-columns-repeated');
  let text = '';
  let column = row.nextColumn;
  for (const [place, write] of writes) {
    const to = blank.length;
    const cell: OdsCellAt = {
      name,
      attributes: {},
      from: 0,
      tagTo: to,
      contentTo: to,
      to,
      column: place,
      repeated: 1,
      known: {},
      paragraphs: [],
      shown: undefined,
    };
    const edit = odsCellEdit(blank, cell, write, { ...context, style: styleOf(cell, row, place, context) });
    if (edit === undefined) continue;
    const gap = place - column;
    if (gap > 0) text += gap === 1 ? blank : tagWith(blank, { [repeated]: String(gap) });
    text += edit;
    column = place + 1;
  }
  return text;
}

function styleOf(cell: OdsCellAt, row: OdsRowAt, column: number, { sheet }: OdsContext): string | undefined {
  const own = cell.known['table:style-name'] ?? row.style;
  return own ?? sheet.columnStyles.find(({ last }) => column <= last)?.style;
}
