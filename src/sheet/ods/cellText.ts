import type { XmlAttributes } from '../xml/walkXml.js';

/** The longest text a cell can hold. */
const longest = 32_767;

/** Collects the text that a cell shows; undefined without any paragraph. */
export class CellText {
  shown: string | undefined;
  #inParagraph = false;

  open(element: string, attributes: XmlAttributes): void {
    if (element === 'text:p') {
      this.shown = this.shown === undefined ? '' : `${this.shown}\n`;
      this.#inParagraph = true;
    } else if (element === 'text:s') this.text(' '.repeat(spaces(attributes['text:c'])));
    else if (element === 'text:tab') this.text('\t');
    else if (element === 'text:line-break') this.text('\n');
  }

  /** Text between paragraphs is only indentation of the file. */
  text(text: string): void {
    if (this.#inParagraph) this.shown = `${this.shown ?? ''}${text}`;
  }

  close(element: string): void {
    if (element === 'text:p') this.#inParagraph = false;
  }
}

function spaces(stated: string | undefined): number {
  const number = Math.trunc(Number(stated ?? 1));
  return number >= 1 ? Math.min(number, longest) : 1;
}
