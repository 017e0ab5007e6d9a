import { bookLimits } from '../book/bookLimits.js';
import type { XmlAttributes } from '../xml/walkXml.js';
import { colourDigits } from './colourOf.js';

export interface Font {
  bold: boolean;
  italic: boolean;
  underline: boolean;
  struck: boolean;
  size: number;
  name: string;
  colour: XmlAttributes | undefined;
}

export interface Fill {
  pattern: string;
  front: XmlAttributes | undefined;
  back: XmlAttributes | undefined;
}

export type Border = { readonly side: string; readonly style: string; colour: XmlAttributes | undefined }[];

/** One style of cells: the numbers of its number format, font, fill and border. */
export interface Xf {
  readonly format: number;
  readonly font: number;
  readonly fill: number;
  readonly border: number;
  alignment: XmlAttributes | undefined;
}

const lists = ['numFmts', 'fonts', 'fills', 'borders', 'cellXfs', 'indexedColors'];

/** Collects the lists of a style sheet. Colours are resolved later, as the workbook's own come last. */
export class StyleParts {
  /** The workbook's own number formats by their numbers. */
  readonly formats = new Map<number, string>();
  readonly fonts: Font[] = [];
  readonly fills: Fill[] = [];
  readonly borders: Border[] = [];
  readonly cells: Xf[] = [];
  readonly indexed: (string | undefined)[] = [];
  #list = '';

  open(element: string, attributes: XmlAttributes): void {
    if (lists.includes(element)) this.#list = element;
    else if (this.#list === 'numFmts') this.formats.set(Number(attributes['numFmtId']), attributes['formatCode'] ?? '');
    else if (this.#list === 'fonts') this.#font(element, attributes);
    else if (this.#list === 'fills') this.#fill(element, attributes);
    else if (this.#list === 'borders') this.#border(element, attributes);
    else if (this.#list === 'cellXfs') this.#cell(element, attributes);
    else if (this.#list === 'indexedColors' && this.indexed.length < 256)
      this.indexed.push(colourDigits(attributes['rgb']));
  }

  close(element: string): void {
    if (element === this.#list) this.#list = '';
  }

  #font(element: string, attributes: XmlAttributes): void {
    if (element === 'font') return add(this.fonts, { ...plainFont });
    const font = this.fonts[this.fonts.length - 1];
    const value = attributes['val'];
    if (font === undefined) return;
    if (element === 'b') font.bold = isOn(value);
    else if (element === 'i') font.italic = isOn(value);
    else if (element === 'strike') font.struck = isOn(value);
    else if (element === 'u') font.underline = value !== 'none';
    else if (element === 'sz') font.size = Number(value);
    else if (element === 'name') font.name = value ?? '';
    else if (element === 'color') font.colour = attributes;
  }

  #fill(element: string, attributes: XmlAttributes): void {
    if (element === 'fill') return add(this.fills, { pattern: 'none', front: undefined, back: undefined });
    const fill = this.fills[this.fills.length - 1];
    if (fill === undefined) return;
    if (element === 'patternFill') fill.pattern = attributes['patternType'] ?? 'none';
    else if (element === 'gradientFill') fill.pattern = 'solid';
    else if (element === 'fgColor') fill.front = attributes;
    else if (element === 'bgColor') fill.back = attributes;
    else if (element === 'color') fill.front ??= attributes;
  }

  #border(element: string, attributes: XmlAttributes): void {
    if (element === 'border') return add(this.borders, []);
    const border = this.borders[this.borders.length - 1];
    const line = border?.[border.length - 1];
    if (element === 'color' && line !== undefined) line.colour = attributes;
    else if (border !== undefined && border.length < 10)
      border.push({ side: element, style: attributes['style'] ?? '', colour: undefined });
  }

  #cell(element: string, attributes: XmlAttributes): void {
    const number = (name: string): number => Number(attributes[name] ?? 0);
    const last = this.cells[this.cells.length - 1];
    if (element === 'xf') {
      const [format, font] = [number('numFmtId'), number('fontId')];
      const [fill, border] = [number('fillId'), number('borderId')];
      add(this.cells, { format, font, fill, border, alignment: undefined });
    } else if (element === 'alignment' && last !== undefined) last.alignment = attributes;
  }
}

const plainFont: Font = {
  bold: false,
  italic: false,
  underline: false,
  struck: false,
  size: NaN,
  name: '',
  colour: undefined,
};

function add<T>(list: T[], item: T): void {
  if (list.length < bookLimits.listed) list.push(item);
}

function isOn(value: string | undefined): boolean {
  return value === undefined || value === '1' || value === 'true' || value === 'on';
}
