import type { BookSheet } from '../book/book.js';
import type { CellCount } from '../book/sheetGrid.js';
import type { XmlAttributes } from '../xml/walkXml.js';
import { CellText } from './cellText.js';
import { OdsNames } from './odsNames.js';
import { odsPrefixes } from './odsPrefixes.js';
import { OdsSheet } from './odsSheet.js';
import type { OdsStyles } from './odsStyles.js';

/** Elements whose cells and texts are not part of the sheet: notes, drawings, forms, old versions. */
const besides = /^(?:office:annotation|office:forms|draw:.*|table:(?:shapes|tracked-changes|dde-links|detective))$/;

/** Reads the content of an .ods file: first its styles, then its sheets, then its names. */
export class ContentReader {
  readonly prefixes = odsPrefixes;
  readonly sheets: BookSheet[] = [];
  readonly names = new OdsNames();
  date1904 = false;
  readonly #count: CellCount = { filled: 0, blank: 0 };
  #inBody = false;
  #besides = 0;
  #sheet: OdsSheet | undefined;
  #cell: XmlAttributes | undefined;
  #text = new CellText();

  constructor(private readonly styles: OdsStyles) {}

  open(element: string, attributes: XmlAttributes): void {
    if (this.#besides > 0 || (this.#inBody && besides.test(element))) this.#besides++;
    else if (element === 'office:body') this.#inBody = true;
    else if (!this.#inBody) this.styles.open(element, attributes);
    else if (this.#cell !== undefined) this.#text.open(element, attributes);
    else if (element === 'table:table-cell' || element === 'table:covered-table-cell') {
      [this.#cell, this.#text] = [attributes, new CellText()];
    } else if (element === 'table:table-row') this.#sheet?.beginRow(attributes);
    else if (element === 'table:table-column') this.#sheet?.putColumns(attributes);
    else if (element === 'table:table') {
      const { styles, date1904 } = this;
      this.#sheet = new OdsSheet(attributes, { styles, date1904, count: this.#count });
    } else if (element === 'table:null-date') {
      this.date1904 = (attributes['table:date-value'] ?? '').startsWith('1904');
    } else this.names.open(element, attributes, this.#sheet?.name);
  }

  text(text: string): void {
    if (this.#besides > 0) return;
    if (!this.#inBody) this.styles.text(text);
    else if (this.#cell !== undefined) this.#text.text(text);
  }

  close(element: string): void {
    if (this.#besides > 0) this.#besides--;
    else if (!this.#inBody) this.styles.close(element);
    else if (element === 'table:table-cell' || element === 'table:covered-table-cell') this.#endCell();
    else if (this.#cell !== undefined) this.#text.close(element);
    else if (element === 'table:table-row') this.#sheet?.endRow();
    else if (element === 'table:table' && this.#sheet !== undefined) {
      this.sheets.push(this.#sheet.sheet());
      this.#sheet = undefined;
    }
  }

  #endCell(): void {
    if (this.#cell !== undefined) this.#sheet?.putCell(this.#cell, this.#text.shown);
    this.#cell = undefined;
  }
}
