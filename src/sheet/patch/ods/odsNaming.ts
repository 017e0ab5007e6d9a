import { odsPrefixes } from '../../ods/odsPrefixes.js';
import type { XmlAttributes } from '../../xml/readXml.js';
import type { StartTag } from '../walkXml.js';

/** Between the prefixes that a file declares on its first element and those of `odsPrefixes`. */
export class OdsNaming {
  private readonly knownOf = new Map<string, string>();
  private readonly ofKnown = new Map<string, string>();
  private readonly names = new Map<string, string>();

  constructor(root: StartTag) {
    for (const [name, uri] of Object.entries(root.attributes)) {
      const prefix = /^xmlns:(.+)$/.exec(name)?.[1];
      const known = odsPrefixes.get(uri ?? '');
      if (prefix === undefined || known === undefined) continue;
      this.knownOf.set(prefix, known);
      if (!this.ofKnown.has(known)) this.ofKnown.set(known, prefix);
    }
  }

  /** The name of an element or attribute of the file as it is known here. */
  known(name: string): string {
    let known = this.names.get(name);
    if (known === undefined) {
      const colon = name.indexOf(':');
      const prefix = this.knownOf.get(name.slice(0, colon));
      known = prefix === undefined ? `other:${name}` : prefix + name.slice(colon);
      this.names.set(name, known);
    }
    return known;
  }

  knownAttributes({ attributes }: StartTag): XmlAttributes {
    const known: Record<string, string> = Object.create(null);
    for (const name in attributes) known[this.known(name)] = attributes[name] ?? '';
    return known;
  }

  /** A known name as the file writes it. */
  inFile(known: string): string {
    const colon = known.indexOf(':');
    const prefix = known.slice(0, colon);
    return (this.ofKnown.get(prefix) ?? prefix) + known.slice(colon);
  }

  /** What an element has to declare before it uses a name whose prefix the file does not declare. */
  declarationFor(known: string): Record<string, string> {
    const prefix = known.slice(0, known.indexOf(':'));
    if (this.ofKnown.has(prefix)) return {};
    const uri = [...odsPrefixes].find(([, name]) => name === prefix)?.[0];
    return uri === undefined ? {} : { [`xmlns:${prefix}`]: uri };
  }
}
