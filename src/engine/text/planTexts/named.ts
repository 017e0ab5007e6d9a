import { references, type Reference, type ReferenceKey } from '../../references/references.js';

/** A source in a sentence: `published` where it was read, else how far it is known. */
export function named(key: ReferenceKey): string {
  const { cite, status }: Reference = references[key];
  switch (status) {
    case 'seen':
    case 'copy':
      return `published: ${cite}`;
    case 'derived':
      return `derived: ${cite}`;
    case 'memory':
      return `from memory: ${cite}`;
    case 'practice':
      return 'common practice';
  }
}
