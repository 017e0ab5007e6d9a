import type { OpenParts } from './openParts.js';
import { localName } from './localName.js';
import { spliced } from './splice.js';
import { walkXml, type StartTag } from './walkXml.js';
import { xmlEscaped } from './xmlEscaped.js';

const transitional = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';

interface Relation {
  readonly id: string;
  /** The last word of its type, such as `styles`. */
  readonly kind: string;
  readonly type: string;
  /** The part it leads to, such as `xl/styles.xml`. */
  readonly part: string;
  readonly tag: StartTag;
}

/** The relations of one part to others, read from and written to its own small part. */
export class Relations {
  private readonly name: string;

  constructor(
    private readonly parts: OpenParts,
    private readonly source: string,
  ) {
    const slash = source.lastIndexOf('/') + 1;
    this.name = `${source.slice(0, slash)}_rels/${source.slice(slash)}.rels`;
  }

  list(): Relation[] {
    const found: Relation[] = [];
    const text = this.parts.text(this.name) ?? '';
    if (text === '') return found;
    const open = (tag: StartTag): void => {
      const { Id: id = '', Type: type = '', Target: target = '', TargetMode: mode } = tag.attributes;
      if (localName(tag.name) !== 'Relationship' || mode === 'External') return;
      found.push({ id, type, kind: type.slice(type.lastIndexOf('/') + 1), part: this.resolved(target), tag });
    };
    walkXml(text, this.name, { open });
    return found;
  }

  partOf(kind: string): string | undefined {
    return this.list().find((relation) => relation.kind === kind)?.part;
  }

  /** Adds a relation to a part in the same folder as the source. */
  add(kind: string, target: string): void {
    const relations = this.list();
    const like = relations.find(({ type }) => type.includes('/officeDocument/'));
    const base = like ? like.type.slice(0, like.type.lastIndexOf('/')) : transitional;
    const taken = new Set(relations.map(({ id }) => id));
    let number = relations.length + 1;
    while (taken.has(`rId${number}`)) number += 1;
    const text = this.parts.text(this.name) ?? '';
    const end = text.lastIndexOf('</');
    const prefix = /^<\/(.*:)?Relationships/.exec(text.slice(end))?.[1] ?? '';
    const tag = `<${prefix}Relationship Id="rId${number}" Type="${xmlEscaped(`${base}/${kind}`)}" Target="${xmlEscaped(target)}"/>`;
    this.parts.put(this.name, spliced(text, [{ from: end, to: end, text: tag }]));
  }

  remove(relation: Relation): void {
    const text = this.parts.text(this.name) ?? '';
    const close = relation.tag.selfClosing ? relation.tag.to : text.indexOf('>', relation.tag.to) + 1;
    this.parts.put(this.name, spliced(text, [{ from: relation.tag.from, to: close, text: '' }]));
  }

  private resolved(target: string): string {
    if (target.startsWith('/')) return target.slice(1);
    const steps = this.source.split('/').slice(0, -1);
    for (const step of target.split('/')) {
      if (step === '..') steps.pop();
      else if (step !== '.') steps.push(step);
    }
    return steps.join('/');
  }
}
