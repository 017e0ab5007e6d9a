import { type CellRange, rangeIn } from '../address/cellRange.js';
import { RichText } from '../xlsx/richText.js';
import type { SheetPlace } from '../xlsx/sheetPlace.js';
import { closeElement, elementAt } from '../xml/elementAt.js';
import type { XmlTag } from '../xml/walkXml.js';
import type { CellAt, RowAt, TextAt } from './sheetMap.js';

const cellDepth = 1;
const partDepth = 2;

/** Reads the cells of one row after the other. Depths count from the row. */
export class CellReader {
  readonly arrays: { row: number; column: number; range: CellRange }[] = [];
  readonly shared = new Map<string, CellAt[]>();
  readonly masters = new Map<string, CellAt>();
  private rowNumber = 0;
  private asked: { has(column: number): boolean } | undefined;
  private row: RowAt | undefined;
  /** The open cell, if it is not written to. */
  private passed: XmlTag | undefined;
  private cell: CellAt | undefined;
  private inCell: TextAt | undefined;
  private rich: RichText | undefined;

  constructor(private readonly place: SheetPlace) {}

  beginRow(asked: { has(column: number): boolean } | undefined, row: RowAt | undefined): void {
    this.rowNumber = this.place.row;
    this.asked = asked;
    this.row = row;
  }

  open(name: string, tag: XmlTag, depth: number): void {
    if (depth === cellDepth) {
      if (name === 'c') this.openCell(tag);
    } else if (depth === partDepth) this.openText(name, tag);
    else this.rich?.open(name);
  }

  close(name: string, tag: XmlTag, depth: number): void {
    if (depth === cellDepth) this.closeCell(tag);
    else if (depth === partDepth) this.closeText(tag);
    else this.rich?.close(name);
  }

  text(text: string): void {
    if (this.rich) this.rich.add(text);
    else if (this.inCell) this.inCell.text += text;
  }

  private openCell(tag: XmlTag): void {
    const address = tag.attributes['r'];
    this.place.beginCell(address);
    this.passed = tag.kept();
    if (!this.row) return;
    const { column } = this.place;
    this.row.columns.push(column);
    this.row.starts.push(tag.from);
    if (address === undefined) this.row.unstated.add(column);
    if (!this.asked?.has(column)) return;
    this.cell = this.cellAt(tag);
    this.row.cells.set(column, this.cell);
  }

  /** A cell that is not written to matters only if its formula reaches beyond it. */
  private openText(name: string, tag: XmlTag): void {
    if (!this.cell) {
      const kind = name === 'f' && this.passed ? tag.attributes['t'] : undefined;
      if (!this.passed || (kind !== 'array' && kind !== 'shared')) return;
      this.cell = this.cellAt(this.passed);
    }
    const text: TextAt = { ...elementAt(tag), text: '' };
    if (name === 'f') this.cell.formula = text;
    else if (name === 'v') this.cell.value = text;
    else if (name === 'is') this.cell.inline = text;
    else return;
    this.inCell = text;
    if (name === 'is') this.rich = new RichText();
  }

  private closeText(tag: XmlTag): void {
    if (!this.inCell) return;
    closeElement(this.inCell, tag);
    if (this.rich) this.inCell.text = this.rich.text;
    this.inCell = this.rich = undefined;
  }

  private closeCell(tag: XmlTag): void {
    const { cell, passed } = this;
    this.cell = this.passed = undefined;
    if (this.row && passed) this.row.cellsTo = tag.to;
    if (!cell) return;
    closeElement(cell, tag);
    const { row, column, formula } = cell;
    const { t: kind, ref, si } = formula?.attributes ?? {};
    const range = kind === 'array' ? rangeIn(ref) : undefined;
    if (range !== undefined) this.arrays.push({ row, column, range });
    if (kind !== 'shared' || si === undefined) return;
    if (formula?.text !== '') this.masters.set(si, cell);
    const cells = this.shared.get(si);
    if (cells) cells.push(cell);
    else this.shared.set(si, [cell]);
  }

  private cellAt(tag: XmlTag): CellAt {
    return { ...elementAt(tag), row: this.rowNumber, column: this.place.column };
  }
}
