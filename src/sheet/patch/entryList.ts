import { eachElement, type ElementAt, prefixOf } from '../xml/elementAt.js';
import { xmlAttribute } from '../xml/xmlText.js';
import { spreadsheetPrefixes as prefixes } from '../xlsx/spreadsheetPrefixes.js';
import { FileProblem } from '../zip/fileProblem.js';
import type { OpenParts } from './openParts.js';
import { spliced, withEntry } from './splice.js';

/** A part that is one flat list: the relations of a part, or the types of all parts. */
export class EntryList {
  /** @param entry what its elements are called, such as `Relationship` */
  constructor(
    private readonly parts: OpenParts,
    private readonly part: string,
    private readonly entry: string,
  ) {}

  entries(): ElementAt[] {
    return this.text() === '' ? [] : this.read().entries;
  }

  add(attributes: Readonly<Record<string, string>>): void {
    const { root } = this.read();
    const said = Object.entries(attributes).map(([name, value]) => ` ${name}="${xmlAttribute(value)}"`);
    const text = this.text();
    const tag = `<${prefixOf(root)}${this.entry}${said.join('')}/>`;
    this.parts.put(this.part, spliced(text, withEntry(text, root, tag)));
  }

  remove({ from, to }: ElementAt): void {
    this.parts.put(this.part, spliced(this.text(), [{ from, to, text: '' }]));
  }

  private text(): string {
    return this.parts.text(this.part) ?? '';
  }

  private read(): { readonly root: ElementAt; readonly entries: ElementAt[] } {
    const entries: ElementAt[] = [];
    let root: ElementAt | undefined;
    const { part, entry } = this;
    eachElement({ text: this.text(), part, prefixes }, (name, element, { length: depth }) => {
      if (depth === 0) root = element;
      else if (depth === 1 && name === entry) entries.push(element);
    });
    if (root === undefined) throw new FileProblem(`The file is damaged: its part ${JSON.stringify(part)} is empty.`);
    return { root, entries };
  }
}
