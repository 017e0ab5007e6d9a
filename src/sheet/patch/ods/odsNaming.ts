import { odsPrefixes } from '../../ods/odsPrefixes.js';
import type { XmlAttributes } from '../../xml/walkXml.js';
import { FileProblem } from '../../zip/fileProblem.js';

/** From the prefixes of `odsPrefixes` to those that a file declares on its first element. */
export class OdsNaming {
  private readonly ofKnown = new Map<string, string>();

  /** @param root the attributes of the first element, as written */
  constructor(root: XmlAttributes) {
    for (const [name, uri] of Object.entries(root)) {
      const prefix = /^xmlns:(.+)$/.exec(name)?.[1];
      const known = odsPrefixes.get(uri);
      if (prefix !== undefined && known !== undefined && !this.ofKnown.has(known)) this.ofKnown.set(known, prefix);
    }
    for (const needed of ['table', 'text']) {
      if (!this.ofKnown.has(needed)) {
        throw new FileProblem(
          'content.xml in the file declares its names in an unusual way, it was not changed: save the file again with your spreadsheet program.',
        );
      }
    }
  }

  /** A known name as the file writes it. */
  inFile(known: string): string {
    const colon = known.indexOf(':');
    const prefix = known.slice(0, colon);
    return (this.ofKnown.get(prefix) ?? prefix) + known.slice(colon);
  }

  /** What an element must declare before it uses a prefix that the file does not declare. */
  declarationFor(known: string): Record<string, string> {
    const prefix = known.slice(0, known.indexOf(':'));
    if (this.ofKnown.has(prefix)) return {};
    const uri = [...odsPrefixes].find(([, name]) => name === prefix)?.[0];
    return uri === undefined ? {} : { [`xmlns:${prefix}`]: uri };
  }
}
