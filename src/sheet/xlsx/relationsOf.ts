import type { PackageParts } from '../zip/packageParts.js';
import { walkXml, type XmlAttributes } from '../xml/walkXml.js';
import { spreadsheetPrefixes } from './spreadsheetPrefixes.js';

/** A part that another one points to. */
export interface Relation {
  readonly id: string;
  /** The last step of its type, such as `worksheet`. */
  readonly type: string;
  /** Its full name in the package. */
  readonly part: string;
}

/** What a part points to inside the package; `''` is the package itself. */
export function relationsOf(parts: PackageParts, part: string): Relation[] {
  const name = relationsPart(part);
  const bytes = parts.bytes(name);
  const relations: Relation[] = [];
  if (bytes === undefined) return relations;
  walkXml(bytes, name, {
    prefixes: spreadsheetPrefixes,
    open: (element, attributes) => {
      const relation = element === 'Relationship' ? relationIn(attributes, part) : undefined;
      if (relation !== undefined) relations.push(relation);
    },
  });
  return relations;
}

/** The small part that holds the relations of another. */
export function relationsPart(part: string): string {
  const slash = part.lastIndexOf('/') + 1;
  return `${part.slice(0, slash)}_rels/${part.slice(slash)}.rels`;
}

/** The relation that an element states; undefined where it leads out of the package. */
export function relationIn(attributes: Partial<XmlAttributes>, from: string): Relation | undefined {
  const { Id: id = '', Type: type = '', Target: target = '', TargetMode: mode } = attributes;
  if (mode === 'External') return undefined;
  return { id, type: type.slice(type.lastIndexOf('/') + 1), part: resolved(from, target) };
}

/** A target counts from the folder of its part, or from the top where it begins with a slash. */
function resolved(from: string, target: string): string {
  const folder = from.slice(0, from.lastIndexOf('/') + 1);
  const steps: string[] = [];
  for (const step of (target.startsWith('/') ? target : `${folder}${target}`).split('/')) {
    if (step === '..') steps.pop();
    else if (step !== '' && step !== '.') steps.push(step);
  }
  return steps.join('/');
}
