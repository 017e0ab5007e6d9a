import { bookLimits } from '../book/bookLimits.js';
import type { CellLook } from '../book/cellLook.js';
import type { XmlAttributes } from '../xml/walkXml.js';
import { lookOfOds } from './lookOfOds.js';

interface Named {
  readonly parent: string | undefined;
  /** Its own properties. Those of letters, cells and paragraphs have different names. */
  readonly said: Record<string, string>;
}

const cells = 'table-cell';
const parts = new Set(['style:text-properties', 'style:paragraph-properties', 'style:table-cell-properties']);
const deepest = 20;

/** The looks of cell styles of an .ods file, as their elements are met. */
export class OdsLooks {
  readonly #styles = new Map<string, Named>();
  readonly #looks = new Map<string | undefined, CellLook>();
  readonly #same = new Map<string, CellLook>();
  #style: Named | undefined;

  open(element: string, attributes: XmlAttributes): void {
    const isStyle = element === 'style:style' || element === 'style:default-style';
    if (isStyle) this.#begin(element, attributes);
    else if (parts.has(element) && this.#style !== undefined) {
      for (const name in attributes) {
        // A background behind the letters is not the background of the cell.
        const isPaper = name === 'fo:background-color' && element !== 'style:table-cell-properties';
        if (/^(?:fo|style):/.test(name) && !isPaper) this.#style.said[name] = attributes[name] ?? '';
      }
    }
  }

  close(element: string): void {
    if (element === 'style:style' || element === 'style:default-style') this.#style = undefined;
  }

  /** The look of a cell without any style. */
  get plain(): CellLook {
    return this.#lookOf('Default');
  }

  /** undefined: as a cell without any style. */
  look(style: string | undefined): CellLook | undefined {
    const look = style === undefined ? this.plain : this.#lookOf(style);
    return look === this.plain ? undefined : look;
  }

  /** The default style, which all others build on, has no name. */
  #begin(element: string, attributes: XmlAttributes): void {
    this.#style = undefined;
    if (attributes['style:family'] !== cells || this.#styles.size >= bookLimits.listed) return;
    const isBase = element === 'style:default-style';
    this.#style = {
      parent: isBase ? undefined : (attributes['style:parent-style-name'] ?? ''),
      said: Object.create(null) as Record<string, string>,
    };
    this.#styles.set(isBase ? '' : (attributes['style:name'] ?? ''), this.#style);
  }

  #lookOf(name: string): CellLook {
    const known = this.#looks.get(name);
    if (known !== undefined) return known;
    const look = lookOfOds(this.#said(name));
    const key = JSON.stringify(look);
    const same = this.#same.get(key) ?? look;
    this.#same.set(key, same);
    this.#looks.set(name, same);
    return same;
  }

  /** What a style does not say, its parent says; a circle of parents is left after some steps. */
  #said(name: string): XmlAttributes {
    const said = Object.create(null) as Record<string, string>;
    let style = this.#styles.get(name) ?? this.#styles.get('');
    for (let steps = 0; style !== undefined && steps < deepest; steps++) {
      for (const one in style.said) said[one] ??= style.said[one] ?? '';
      style = style.parent === undefined ? undefined : this.#styles.get(style.parent);
    }
    return said;
  }
}
