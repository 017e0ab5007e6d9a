import type { PackageParts } from '../book/packageParts.js';
import { readXml } from '../xml/readXml.js';
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
  const slash = part.lastIndexOf('/') + 1;
  const folder = part.slice(0, slash);
  const name = `${folder}_rels/${part.slice(slash)}.rels`;
  const bytes = parts.bytes(name);
  const relations: Relation[] = [];
  if (bytes === undefined) return relations;
  readXml(bytes, name, {
    prefixes: spreadsheetPrefixes,
    open: (element, attributes) => {
      if (element !== 'Relationship' || attributes['TargetMode'] === 'External') return;
      const type = attributes['Type'] ?? '';
      relations.push({
        id: attributes['Id'] ?? '',
        type: type.slice(type.lastIndexOf('/') + 1),
        part: resolved(folder, attributes['Target'] ?? ''),
      });
    },
  });
  return relations;
}

/** A target counts from the folder of its part, or from the top where it begins with a slash. */
function resolved(folder: string, target: string): string {
  const steps: string[] = [];
  for (const step of (target.startsWith('/') ? target : `${folder}${target}`).split('/')) {
    if (step === '..') steps.pop();
    else if (step !== '' && step !== '.') steps.push(step);
  }
  return steps.join('/');
}
