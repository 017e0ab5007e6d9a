import { CellText } from '../../ods/cellText.js';
import { odsPrefixes } from '../../ods/odsPrefixes.js';
import { timesRepeated } from '../../ods/odsSpans.js';
import type { OdsStyles } from '../../ods/odsStyles.js';
import { closeElement, type ElementAt, elementAt } from '../../xml/elementAt.js';
import { walkXml, type XmlAttributes, type XmlTag, type XmlWalker } from '../../xml/walkXml.js';
import type { OdsCellAt, OdsMap, OdsRowAt, OdsSheetMap } from './odsMap.js';
import { OdsNaming } from './odsNaming.js';

const tableDepth = 3;
const groups = /^table:table-(?:row-group|header-rows|rows|column-group|header-columns|columns)$/;

/** The columns that are written to in one of several equal rows; undefined where none is. */
type OdsAsked = (sheet: string, row: number, rows: number) => ReadonlySet<number> | undefined;

/** Where the rows of the sheets are, and the cells to be written to. */
export function readOdsContent(xml: string, styles: OdsStyles, asked: OdsAsked): OdsMap {
  const reader = new ContentReader(styles, asked);
  walkXml(xml, 'content.xml', reader);
  if (!reader.naming) throw new Error('content.xml has no root');
  return { sheets: reader.sheets, styles, naming: reader.naming };
}

class ContentReader implements XmlWalker {
  readonly prefixes = odsPrefixes;
  readonly sheets = new Map<string, OdsSheetMap>();
  naming: OdsNaming | undefined;
  private inBody = false;
  private sheetName = '';
  private sheet: OdsSheetMap | undefined;
  private row: OdsRowAt | undefined;
  private columns: ReadonlySet<number> | undefined;
  private cell: OdsCellAt | undefined;
  private paragraph: ElementAt | undefined;
  private shown = new CellText();
  /** The groups of rows and columns that are open in the sheet. */
  private groups = 0;
  private nextRow = 0;
  private nextColumn = 0;

  constructor(
    private readonly styles: OdsStyles,
    private readonly asked: OdsAsked,
  ) {}

  open(name: string, attributes: XmlAttributes, tag: XmlTag): void {
    this.naming ??= new OdsNaming(tag.attributes);
    if (tag.depth === 1 && name === 'office:body') this.inBody = true;
    if (!this.inBody) this.styles.open(name, attributes);
    else if (tag.depth === tableDepth && name === 'table:table') this.openSheet(attributes, tag);
    else if (this.sheet) this.openInSheet(name, attributes, tag, this.sheet);
  }

  close(name: string, tag: XmlTag): void {
    const inside = this.depthInSheet(tag);
    if (!this.inBody) this.styles.close(name);
    else if (!this.sheet) return;
    else if (this.paragraph) this.closeInParagraph(this.paragraph, tag, inside);
    else if (inside === 1 && this.row) this.closeCell(tag, this.row);
    else if (inside === 0) this.closeInSheet(tag, this.sheet);
    else if (tag.depth === tableDepth) this.sheet = undefined;
    else if (inside === -1) {
      this.groups -= 1;
      if (this.groups === 0) this.sheet.end = tag.to;
    }
  }

  text(text: string): void {
    if (!this.inBody) this.styles.text(text);
    else if (this.paragraph) this.shown.text(text);
  }

  /** A row or a column is at 0, a cell at 1, its paragraphs at 2; groups do not count. */
  private depthInSheet({ depth }: XmlTag): number {
    return depth - tableDepth - 1 - this.groups;
  }

  private openInSheet(name: string, attributes: XmlAttributes, tag: XmlTag, sheet: OdsSheetMap): void {
    const inside = this.depthInSheet(tag);
    if (this.paragraph) this.shown.open(name, attributes);
    else if (this.cell) {
      if (inside === 2 && name === 'text:p') this.openParagraph(tag, this.cell);
    } else if (this.row) {
      if (inside === 1 && /^table:(covered-)?table-cell$/.test(name)) this.openCell(attributes, tag, this.row);
    } else if (inside !== 0) return;
    else if (groups.test(name)) this.groups += 1;
    else if (name === 'table:table-row') this.openRow(attributes, tag, sheet);
    else if (name === 'table:table-column') this.openColumn(attributes, sheet);
  }

  private openSheet(attributes: XmlAttributes, tag: XmlTag): void {
    this.sheetName = attributes['table:name'] ?? '';
    this.sheet = { rows: [], end: tag.to, columnStyles: [] };
    this.sheets.set(this.sheetName, this.sheet);
    [this.nextRow, this.nextColumn, this.groups] = [0, 0, 0];
  }

  private openColumn(attributes: XmlAttributes, { columnStyles }: OdsSheetMap): void {
    this.nextColumn += timesRepeated(attributes, 'columns');
    columnStyles.push({ last: this.nextColumn - 1, style: attributes['table:default-cell-style-name'] });
  }

  private openRow(attributes: XmlAttributes, tag: XmlTag, sheet: OdsSheetMap): void {
    const repeated = timesRepeated(attributes, 'rows');
    const style = attributes['table:default-cell-style-name'];
    this.row = { ...elementAt(tag), row: this.nextRow, repeated, style, cells: [], nextColumn: 0, cellsTo: tag.to };
    this.columns = this.asked(this.sheetName, this.nextRow, repeated);
    sheet.rows.push(this.row);
    this.nextRow += repeated;
  }

  private openCell(known: XmlAttributes, tag: XmlTag, row: OdsRowAt): void {
    if (!this.columns) return;
    const repeated = timesRepeated(known, 'columns');
    const column = row.nextColumn;
    row.nextColumn += repeated;
    if (![...this.columns].some((asked) => asked >= column && asked < row.nextColumn)) return;
    this.cell = { ...elementAt(tag), column, repeated, known, paragraphs: [], shown: undefined };
    row.cells.push(this.cell);
    this.shown = new CellText();
  }

  private closeCell(tag: XmlTag, row: OdsRowAt): void {
    row.cellsTo = tag.to;
    if (!this.cell) return;
    closeElement(this.cell, tag);
    this.cell.shown = this.shown.shown;
    this.cell = undefined;
  }

  private openParagraph(tag: XmlTag, cell: OdsCellAt): void {
    this.paragraph = elementAt(tag);
    cell.paragraphs.push(this.paragraph);
    this.shown.open('text:p', {});
  }

  private closeInParagraph(paragraph: ElementAt, tag: XmlTag, inside: number): void {
    if (inside !== 2) return;
    closeElement(paragraph, tag);
    this.shown.close('text:p');
    this.paragraph = undefined;
  }

  private closeInSheet(tag: XmlTag, sheet: OdsSheetMap): void {
    if (this.row) closeElement(this.row, tag);
    // What follows the rows of a sheet, such as its names, must stay after them.
    if (this.groups === 0 && (this.row || sheet.rows.length === 0)) sheet.end = tag.to;
    this.row = undefined;
  }
}
