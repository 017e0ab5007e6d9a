import { FileProblem } from '../zip/fileProblem.js';
import { CellReader } from './cellReader.js';
import { closeElement } from './closeElement.js';
import { elementAt } from './elementAt.js';
import { localName } from './localName.js';
import type { ElementAt, RowAt, SheetMap } from './sheetMap.js';
import { walkXml, type EndTag, type StartTag, type XmlWalker } from './walkXml.js';

const sheetDepth = 1;
const rowDepth = 2;

/** The rows and columns that are written to. */
type Asked = ReadonlyMap<number, { has(column: number): boolean }>;

/** Where the rows of a sheet stand, and the cells asked for. */
export function readSheet(xml: string, part: string, asked: Asked): SheetMap {
  const reader = new SheetReader(part, asked);
  walkXml(xml, part, reader);
  const { data, dimension, rowNumbers, rowStarts, rows, columns } = reader;
  const { arrays, shared, masters } = reader.cells;
  if (!data) throw new FileProblem(`${part} in the file holds no cells, write to a sheet with cells instead.`);
  return { data, rowNumbers, rowStarts, rows, arrays, shared, masters, columns, ...(dimension && { dimension }) };
}

class SheetReader implements XmlWalker {
  data: ElementAt | undefined;
  dimension: ElementAt | undefined;
  readonly rowNumbers: number[] = [];
  readonly rowStarts: number[] = [];
  readonly rows = new Map<number, RowAt>();
  readonly columns: { first: number; last: number; style: string }[] = [];
  readonly cells: CellReader;
  private inData = false;
  private row: RowAt | undefined;

  constructor(
    private readonly part: string,
    private readonly asked: Asked,
  ) {
    this.cells = new CellReader(part);
  }

  open(tag: StartTag, depth: number): void {
    if (this.inData && depth > rowDepth) this.cells.open(tag, depth - rowDepth);
    else if (depth === sheetDepth) this.openPart(tag);
    else if (depth === rowDepth && this.inData) this.openRow(tag);
    else if (depth === rowDepth && localName(tag.name) === 'col') this.openColumn(tag);
  }

  close(tag: EndTag, depth: number): void {
    if (!this.inData || !this.data) return;
    if (depth > rowDepth) this.cells.close(tag, depth - rowDepth);
    else if (depth === rowDepth) {
      if (this.row) closeElement(this.row, tag);
      this.row = undefined;
    } else {
      closeElement(this.data, tag);
      this.inData = false;
    }
  }

  text(text: string): void {
    this.cells.text(text);
  }

  private openPart(tag: StartTag): void {
    const name = localName(tag.name);
    if (name === 'dimension') this.dimension = elementAt(tag);
    if (name !== 'sheetData' || this.data) return;
    this.data = elementAt(tag);
    this.inData = true;
  }

  private openColumn({ attributes: { min, max, style } }: StartTag): void {
    if (style !== undefined) this.columns.push({ first: Number(min) - 1, last: Number(max) - 1, style });
  }

  private openRow(tag: StartTag): void {
    const stated = tag.attributes['r'];
    const row = stated === undefined ? (this.rowNumbers[this.rowNumbers.length - 1] ?? -1) + 1 : Number(stated) - 1;
    if (!Number.isInteger(row) || row < 0) {
      throw new FileProblem(
        `${this.part} in the file has a row "${stated ?? ''}", which is no number of a row: save the file anew with your spreadsheet program.`,
      );
    }
    this.rowNumbers.push(row);
    this.rowStarts.push(tag.from);
    const asked = this.asked.get(row);
    const places = { columns: [], starts: [], unstated: new Set<number>(), cells: new Map(), cellsTo: tag.to };
    this.row = asked && { ...elementAt(tag), row, ...places };
    if (this.row) this.rows.set(row, this.row);
    this.cells.beginRow(row, asked, this.row);
  }
}
