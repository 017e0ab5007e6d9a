import { localName } from './localName.js';
import type { OpenParts } from './openParts.js';
import { spliced } from './splice.js';
import { walkXml, type StartTag } from './walkXml.js';
import { xmlEscaped } from './xmlEscaped.js';

const name = '[Content_Types].xml';

/** The list of what kind each part is. */
export class ContentTypes {
  constructor(private readonly parts: OpenParts) {}

  /** Sets the type of a part that has none of its own yet. */
  add(part: string, type: string): void {
    const text = this.parts.text(name) ?? '';
    if (this.overrideOf(part)) return;
    const end = text.lastIndexOf('</');
    const prefix = /^<\/(.*:)?Types/.exec(text.slice(end))?.[1] ?? '';
    const tag = `<${prefix}Override PartName="/${xmlEscaped(part)}" ContentType="${xmlEscaped(type)}"/>`;
    this.parts.put(name, spliced(text, [{ from: end, to: end, text: tag }]));
  }

  remove(part: string): void {
    const text = this.parts.text(name) ?? '';
    const tag = this.overrideOf(part);
    if (!tag) return;
    const to = tag.selfClosing ? tag.to : text.indexOf('>', tag.to) + 1;
    this.parts.put(name, spliced(text, [{ from: tag.from, to, text: '' }]));
  }

  private overrideOf(part: string): StartTag | undefined {
    let found: StartTag | undefined;
    const open = (tag: StartTag): void => {
      const isOverride = localName(tag.name) === 'Override';
      if (isOverride && tag.attributes['PartName']?.toLowerCase() === `/${part.toLowerCase()}`) found = tag;
    };
    walkXml(this.parts.text(name) ?? '', name, { open });
    return found;
  }
}
