import { isDateFormat } from '../book/isDateFormat.js';
import { formatNumbered } from '../xlsx/builtInFormats.js';
import { spreadsheetPrefixes } from '../xlsx/spreadsheetPrefixes.js';
import { eachElement, type ElementAt, prefixOf } from '../xml/elementAt.js';
import type { OpenParts } from './openParts.js';
import { spliced, type Splice, withEntry } from './splice.js';
import { tagWith } from './tagWith.js';

const firstOwnFormat = 164;

interface Styles {
  readonly formats: ElementAt | undefined;
  readonly formatCodes: ReadonlyMap<number, string>;
  readonly list: ElementAt | undefined;
  readonly cells: readonly ElementAt[];
  readonly root: ElementAt | undefined;
}

/** The styles of cells: which of them show a date, and new ones that do. */
export class DateStyles {
  private known: Styles | undefined;

  constructor(
    private readonly parts: OpenParts,
    private readonly part: string | undefined,
  ) {}

  isDate(style: string): boolean {
    const { cells, formatCodes } = this.styles();
    return isDateFormat(formatNumbered(Number(cells[Number(style)]?.attributes['numFmtId'] ?? 0), formatCodes));
  }

  /** The number of a style that is like another but shows a date; undefined in a file without styles. */
  dated(style: string, format: string): string | undefined {
    if (this.part === undefined || !this.styles().cells[Number(style)]) return undefined;
    // Adding a format moves everything after it, so it is done first.
    const id = this.formatId(format);
    const { cells, list } = this.styles();
    const like = cells[Number(style)];
    if (!list || !like) return undefined;
    const text = this.text();
    const xf = copyWith(text, like, id);
    const there = cells.findIndex(({ from, to }) => text.slice(from, to) === xf);
    if (there >= 0) return String(there);
    this.put(withEntry(text, list, xf, { count: String(cells.length + 1) }));
    return String(cells.length);
  }

  private formatId(format: string): string {
    const { formatCodes, formats, root } = this.styles();
    for (const [id, code] of formatCodes) if (code === format) return String(id);
    const id = String(Math.max(firstOwnFormat - 1, ...formatCodes.keys()) + 1);
    const text = this.text();
    const prefix = root ? prefixOf(root) : '';
    const xml = `<${prefix}numFmt numFmtId="${id}" formatCode="${format}"/>`;
    if (formats) this.put(withEntry(text, formats, xml, { count: String(formatCodes.size + 1) }));
    else if (root) {
      const whole = `<${prefix}numFmts count="1">${xml}</${prefix}numFmts>`;
      this.put([{ from: root.tagTo, to: root.tagTo, text: whole }]);
    }
    return id;
  }

  private text(): string {
    return this.part === undefined ? '' : (this.parts.text(this.part) ?? '');
  }

  private put(splices: readonly Splice[]): void {
    if (this.part !== undefined) this.parts.put(this.part, spliced(this.text(), splices));
    this.known = undefined;
  }

  private styles(): Styles {
    this.known ??= read(this.text(), this.part);
    return this.known;
  }
}

function copyWith(text: string, like: ElementAt, format: string): string {
  const tag = tagWith(text.slice(like.from, like.tagTo), { numFmtId: format, applyNumberFormat: '1' });
  return tag + text.slice(like.tagTo, like.to);
}

function read(xml: string, part: string | undefined): Styles {
  const formatCodes = new Map<number, string>();
  const cells: ElementAt[] = [];
  let [root, formats, list]: (ElementAt | undefined)[] = [];
  if (part === undefined) return { root, formats, list, formatCodes, cells };
  eachElement({ text: xml, part, prefixes: spreadsheetPrefixes }, (name, element, around) => {
    const { length: depth, [1]: inside } = around;
    const { numFmtId = '', formatCode = '' } = element.attributes;
    if (depth === 0) root = element;
    else if (depth === 1 && name === 'numFmts') formats = element;
    else if (depth === 1 && name === 'cellXfs') list = element;
    else if (depth === 2 && inside === 'cellXfs') cells.push(element);
    else if (depth === 2 && inside === 'numFmts') formatCodes.set(Number(numFmtId), formatCode);
  });
  return { root, formats, list, formatCodes, cells };
}
