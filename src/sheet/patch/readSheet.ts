import { SheetPlace } from '../xlsx/sheetPlace.js';
import { spreadsheetPrefixes } from '../xlsx/spreadsheetPrefixes.js';
import { closeElement, type ElementAt, elementAt } from '../xml/elementAt.js';
import { walkXml, type XmlAttributes, type XmlTag, type XmlWalker } from '../xml/walkXml.js';
import { FileProblem } from '../zip/fileProblem.js';
import { CellReader } from './cellReader.js';
import type { RowAt, SheetMap } from './sheetMap.js';

const sheetDepth = 1;
const rowDepth = 2;

/** The rows and columns that are written to. */
type Asked = ReadonlyMap<number, { has(column: number): boolean }>;

/** Where the rows of a sheet are, and the cells to be written to. */
export function readSheet(xml: string, part: string, asked: Asked): SheetMap {
  const reader = new SheetReader(new SheetPlace(part), asked);
  walkXml(xml, part, reader);
  const { data, dimension, rowNumbers, rowStarts, rows, columns } = reader;
  const { arrays, shared, masters } = reader.cells;
  if (!data) throw new FileProblem(`${part} in the file holds no cells; name a sheet with cells.`);
  return { data, rowNumbers, rowStarts, rows, arrays, shared, masters, columns, ...(dimension && { dimension }) };
}

class SheetReader implements XmlWalker {
  readonly prefixes = spreadsheetPrefixes;
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
    private readonly place: SheetPlace,
    private readonly asked: Asked,
  ) {
    this.cells = new CellReader(place);
  }

  open(name: string, attributes: XmlAttributes, tag: XmlTag): void {
    const { depth } = tag;
    if (this.inData && depth > rowDepth) this.cells.open(name, tag, depth - rowDepth);
    else if (depth === sheetDepth) this.openPart(name, tag);
    else if (depth === rowDepth && this.inData) this.openRow(tag);
    else if (depth === rowDepth && name === 'col') this.openColumn(attributes);
  }

  close(name: string, tag: XmlTag): void {
    if (!this.inData || !this.data) return;
    if (tag.depth > rowDepth) this.cells.close(name, tag, tag.depth - rowDepth);
    else if (tag.depth === rowDepth) {
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

  private openPart(name: string, tag: XmlTag): void {
    if (name === 'dimension') this.dimension = elementAt(tag);
    if (name !== 'sheetData' || this.data) return;
    this.data = elementAt(tag);
    this.inData = true;
  }

  private openColumn({ min, max, style }: Partial<XmlAttributes>): void {
    if (style !== undefined) this.columns.push({ first: Number(min) - 1, last: Number(max) - 1, style });
  }

  private openRow(tag: XmlTag): void {
    this.place.beginRow(tag.attributes['r']);
    const { row } = this.place;
    this.rowNumbers.push(row);
    this.rowStarts.push(tag.from);
    const asked = this.asked.get(row);
    const places = { columns: [], starts: [], unstated: new Set<number>(), cells: new Map(), cellsTo: tag.to };
    this.row = asked && { ...elementAt(tag), row, ...places };
    if (this.row) this.rows.set(row, this.row);
    this.cells.beginRow(asked, this.row);
  }
}
