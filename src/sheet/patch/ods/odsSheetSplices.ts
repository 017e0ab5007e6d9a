import type { CellWrites } from '../cellWrite.js';
import { spliced, type Splice } from '../splice.js';
import { tagWith } from '../tagWith.js';
import type { OdsRowAt } from './odsMap.js';
import { odsRowEdit, type OdsContext } from './odsRowEdit.js';

/** The changes of one sheet in the text of the content. */
export function odsSheetSplices(xml: string, writes: CellWrites, context: OdsContext): Splice[] {
  const splices: Splice[] = [];
  const left = new Map(writes);
  for (const row of context.sheet.rows) {
    const edits = new Map<number, readonly Splice[]>();
    for (const [number, ofRow] of left) {
      if (number >= row.row + row.repeated) break;
      left.delete(number);
      const edit = odsRowEdit(xml, row, ofRow, context);
      if (edit.length > 0) edits.set(number - row.row, edit);
    }
    if (edits.size > 0) splices.push(...rowSplices(xml, row, edits, context));
  }
  const added = rowsBehind(left, context);
  if (added !== '') splices.push({ from: context.sheet.end, to: context.sheet.end, text: added });
  return splices;
}

function rowSplices(
  xml: string,
  row: OdsRowAt,
  edits: ReadonlyMap<number, readonly Splice[]>,
  context: OdsContext,
): Splice[] {
  const isEmpty = row.contentTo === row.to;
  if (row.repeated === 1 && !isEmpty) return [...edits.values()].flat();
  const name = context.map.naming.inFile('table:number-rows-repeated');
  const copy = (count: number, cells: readonly Splice[]): string => {
    if (count === 0) return '';
    const tag = tagWith(xml.slice(row.from, row.tagTo), { [name]: count === 1 ? null : String(count) });
    const inside = cells.map(({ from, to, text }) => ({ from: from - row.tagTo, to: to - row.tagTo, text }));
    const content = spliced(xml.slice(row.tagTo, row.contentTo), inside);
    if (!isEmpty) return tag + content + xml.slice(row.contentTo, row.to);
    return content === '' ? tag : `${tag.replace(/\s*\/>$/, '>')}${content}</${row.name}>`;
  };
  let text = '';
  let done = 0;
  for (const [index, edit] of edits) {
    text += copy(index - done, []) + copy(1, edit);
    done = index + 1;
  }
  return [{ from: row.from, to: row.to, text: text + copy(row.repeated - done, []) }];
}

/** Rows below the last one of the sheet. */
function rowsBehind(writes: CellWrites, context: OdsContext): string {
  const { naming } = context.map;
  const [rowName, cellName] = [naming.inFile('table:table-row'), naming.inFile('table:table-cell')];
  const last = context.sheet.rows[context.sheet.rows.length - 1];
  let next = last ? last.row + last.repeated : 0;
  let text = '';
  for (const [number, ofRow] of writes) {
    const blank = { name: rowName, attributes: {}, from: 0, tagTo: 0, contentTo: 0, to: 0 };
    const row: OdsRowAt = {
      ...blank,
      row: number,
      repeated: 1,
      style: undefined,
      cells: [],
      nextColumn: 0,
      cellsTo: 0,
    };
    const cells = spliced('', odsRowEdit('', row, ofRow, context));
    if (cells === '') continue;
    const gap = number - next;
    const repeated = gap > 1 ? ` ${naming.inFile('table:number-rows-repeated')}="${gap}"` : '';
    if (gap > 0) text += `<${rowName}${repeated}><${cellName}/></${rowName}>`;
    text += `<${rowName}>${cells}</${rowName}>`;
    next = number + 1;
  }
  return text;
}
