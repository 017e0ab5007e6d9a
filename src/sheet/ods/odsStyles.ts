import { bookLimits } from '../book/bookLimits.js';
import type { XmlAttributes } from '../xml/walkXml.js';
import { formatPiece } from './formatPiece.js';
import { OdsLooks } from './odsLooks.js';
import { pixels } from './pixels.js';

interface Style {
  readonly data: string | undefined;
  readonly parent: string | undefined;
  width?: number;
  hidden?: boolean;
  row?: OdsRow;
}

interface OdsRow {
  readonly height: number | undefined;
  /** It does not grow with what is in it. */
  readonly isFixed: boolean;
}

const dataStyles = /^number:(?:number|percentage|currency|date|time|boolean|text)-style$/;

/** Styles of an .ods file as they are met: number formats of cells, widths of columns, sheets that are not shown. */
export class OdsStyles {
  /** Where looks were asked for. */
  readonly looks: OdsLooks | undefined;
  readonly #formats = new Map<string, string>();
  readonly #styles = new Map<string, Style>();
  #style: Style | undefined;
  #name = '';
  #code: string | undefined;
  #elapsed = false;
  #plain = true;
  #literal: string | undefined;

  constructor(withLooks = false) {
    this.looks = withLooks ? new OdsLooks() : undefined;
  }

  open(element: string, attributes: XmlAttributes): void {
    this.looks?.open(element, attributes);
    if (element === 'style:style') this.#beginStyle(attributes);
    else if (element === 'style:table-column-properties' && this.#style !== undefined) {
      const width = pixels(attributes['style:column-width']);
      if (width !== undefined) this.#style.width = width;
    } else if (element === 'style:table-properties' && this.#style !== undefined) {
      this.#style.hidden = attributes['table:display'] === 'false';
    } else if (element === 'style:table-row-properties' && this.#style !== undefined) {
      const isFixed = attributes['style:use-optimal-row-height'] === 'false';
      this.#style.row = { height: pixels(attributes['style:row-height']), isFixed };
    } else if (dataStyles.test(element)) {
      [this.#name, this.#code, this.#plain] = [attributes['style:name'] ?? '', '', true];
      this.#elapsed = attributes['number:truncate-on-overflow'] === 'false';
    } else if (this.#code !== undefined) this.#addPiece(element, attributes, this.#code);
  }

  text(text: string): void {
    if (this.#literal !== undefined) this.#literal += text;
  }

  close(element: string): void {
    this.looks?.close(element);
    if (element === 'style:style') this.#style = undefined;
    else if (element === 'number:text' || element === 'number:currency-symbol') {
      if (this.#code !== undefined) this.#code += quoted(this.#literal ?? '');
      if ((this.#literal ?? '') !== '') this.#plain = false;
      this.#literal = undefined;
    } else if (dataStyles.test(element)) {
      // A number without any details is the general format, which has no code.
      if (this.#code !== undefined && this.#code !== '' && !this.#plain) this.#formats.set(this.#name, this.#code);
      this.#code = undefined;
    }
  }

  format(style: string | undefined): string | undefined {
    const data = this.#found(style, (one) => one.data);
    return data === undefined ? undefined : this.#formats.get(data);
  }

  width(style: string | undefined): number | undefined {
    return this.#found(style, (one) => one.width);
  }

  row(style: string | undefined): OdsRow | undefined {
    return this.#found(style, (one) => one.row);
  }

  hidden(style: string | undefined): boolean {
    return this.#found(style, (one) => one.hidden) ?? false;
  }

  #beginStyle(attributes: XmlAttributes): void {
    if (this.#styles.size >= bookLimits.listed) return;
    this.#style = {
      data: attributes['style:data-style-name'],
      parent: attributes['style:parent-style-name'],
    };
    this.#styles.set(attributes['style:name'] ?? '', this.#style);
  }

  #addPiece(element: string, attributes: XmlAttributes, code: string): void {
    if (element === 'number:text' || element === 'number:currency-symbol') this.#literal = '';
    if (element === 'style:map') this.#putPositive(attributes, code);
    const piece = formatPiece(element, attributes);
    if (piece === undefined) return;
    if (element !== 'number:number' || attributes['number:decimal-places'] !== undefined || piece !== '0') {
      this.#plain = false;
    }
    this.#code = code + (this.#elapsed && /^[hms]/.test(piece) ? `[${piece}]` : piece);
    if (/^[hms]/.test(piece)) this.#elapsed = false;
  }

  /** A format for negative numbers refers to the one for all others, which comes first in a format code. */
  #putPositive(attributes: XmlAttributes, code: string): void {
    const positive = this.#formats.get(attributes['style:apply-style-name'] ?? '');
    if (positive === undefined || !/^value\(\)\s*>=?\s*0$/.test(attributes['style:condition'] ?? '')) return;
    if (positive.length + code.length < 255) this.#code = `${positive};${code}`;
  }

  /** What a style does not say, its parent says; a circle of parents is left after some steps. */
  #found<T>(name: string | undefined, of: (style: Style) => T | undefined): T | undefined {
    let style = name === undefined ? undefined : this.#styles.get(name);
    for (let steps = 0; style !== undefined && steps < 20; steps++) {
      const found = of(style);
      if (found !== undefined) return found;
      style = style.parent === undefined ? undefined : this.#styles.get(style.parent);
    }
    return undefined;
  }
}

function quoted(text: string): string {
  return /^[-/:., ()%$€£+]*$/.test(text) ? text : `"${text.replace(/"/g, '')}"`;
}
