import type { CellRange } from '../address/cellRange.js';
import { addressIn } from './addressIn.js';
import { closeElement } from './closeElement.js';
import { elementAt } from './elementAt.js';
import { localName } from './localName.js';
import { RichText } from './richText.js';
import type { CellAt, RowAt, TextAt } from './sheetMap.js';
import type { EndTag, StartTag } from './walkXml.js';

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
  /** The last address in the row, and how many cells without one followed. */
  private stated: string | undefined;
  private sinceStated = 0;
  /** A cell whose tag was met and that nobody asked for. */
  private passed: StartTag | undefined;
  private cell: CellAt | undefined;
  private inCell: TextAt | undefined;
  private rich: RichText | undefined;

  constructor(private readonly part: string) {}

  beginRow(number: number, asked: { has(column: number): boolean } | undefined, row: RowAt | undefined): void {
    this.rowNumber = number;
    this.asked = asked;
    this.row = row;
    this.stated = undefined;
    this.sinceStated = 0;
  }

  open(tag: StartTag, depth: number): void {
    if (depth === cellDepth) {
      if (localName(tag.name) === 'c') this.openCell(tag);
    } else if (depth === partDepth) this.openText(tag, localName(tag.name));
    else this.rich?.opened(localName(tag.name));
  }

  close(tag: EndTag, depth: number): void {
    if (depth === cellDepth) this.closeCell(tag);
    else if (depth === partDepth) this.closeText(tag);
    else this.rich?.closed();
  }

  text(text: string): void {
    if (this.rich) this.rich.add(text);
    else if (this.inCell) this.inCell.text += text;
  }

  private openCell(tag: StartTag): void {
    const address = tag.attributes['r'];
    if (address === undefined) this.sinceStated += 1;
    else {
      this.stated = address;
      this.sinceStated = 0;
    }
    this.passed = tag;
    if (!this.row) return;
    const column = this.column();
    this.row.columns.push(column);
    this.row.starts.push(tag.from);
    if (address === undefined) this.row.unstated.add(column);
    if (!this.asked?.has(column)) return;
    this.cell = this.cellAt(tag, column);
    this.row.cells.set(column, this.cell);
  }

  /** Of cells that nobody asked for, those count whose formula reaches beyond them. */
  private openText(tag: StartTag, name: string): void {
    if (!this.cell) {
      const kind = name === 'f' && this.passed ? tag.attributes['t'] : undefined;
      if (!this.passed || (kind !== 'array' && kind !== 'shared')) return;
      this.cell = this.cellAt(this.passed, this.column());
    }
    const text: TextAt = { ...elementAt(tag), text: '' };
    if (name === 'f') this.cell.formula = text;
    else if (name === 'v') this.cell.value = text;
    else if (name === 'is') this.cell.inline = text;
    else return;
    this.inCell = text;
    if (name === 'is') this.rich = new RichText();
  }

  private closeText(tag: EndTag): void {
    if (!this.inCell) return;
    closeElement(this.inCell, tag);
    if (this.rich) this.inCell.text = this.rich.text;
    this.inCell = this.rich = undefined;
  }

  private closeCell(tag: EndTag): void {
    const { cell, passed } = this;
    this.cell = this.passed = undefined;
    if (this.row && passed) this.row.cellsTo = tag.to;
    if (!cell) return;
    closeElement(cell, tag);
    const { t: kind, ref, si } = cell.formula?.attributes ?? {};
    if (kind === 'array' && ref !== undefined) {
      this.arrays.push({ row: cell.row, column: cell.column, range: addressIn(this.part, ref) });
    }
    if (kind !== 'shared' || si === undefined) return;
    if (cell.formula?.text !== '') this.masters.set(si, cell);
    const cells = this.shared.get(si);
    if (cells) cells.push(cell);
    else this.shared.set(si, [cell]);
  }

  private column(): number {
    const stated = this.stated === undefined ? -1 : addressIn(this.part, this.stated).firstColumn;
    return stated + this.sinceStated;
  }

  private cellAt(tag: StartTag, column: number): CellAt {
    return { ...elementAt(tag), row: this.rowNumber, column };
  }
}
