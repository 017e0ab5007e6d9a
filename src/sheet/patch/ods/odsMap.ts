import type { OdsStyles } from '../../ods/odsStyles.js';
import type { XmlAttributes } from '../../xml/walkXml.js';
import type { ElementAt } from '../../xml/elementAt.js';
import type { OdsNaming } from './odsNaming.js';

/** One or several equal cells side by side. */
export interface OdsCellAt extends ElementAt {
  readonly column: number;
  readonly repeated: number;
  /** With the prefixes of `odsPrefixes`. */
  readonly known: XmlAttributes;
  /** Its paragraphs. */
  readonly paragraphs: ElementAt[];
  /** The text they show; undefined without any. */
  shown: string | undefined;
}

/** One or several equal rows. */
export interface OdsRowAt extends ElementAt {
  readonly row: number;
  readonly repeated: number;
  readonly style: string | undefined;
  /** The cells that are written to, in order. */
  readonly cells: OdsCellAt[];
  /** The column after its last cell, and where that cell ends; known for rows that are written to. */
  nextColumn: number;
  cellsTo: number;
}

export interface OdsSheetMap {
  readonly rows: OdsRowAt[];
  /** Where a row after the last one goes. */
  end: number;
  readonly columnStyles: { readonly last: number; readonly style: string | undefined }[];
}

export interface OdsMap {
  readonly sheets: ReadonlyMap<string, OdsSheetMap>;
  readonly styles: OdsStyles;
  readonly naming: OdsNaming;
}
