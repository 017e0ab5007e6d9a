import { references, type Reference, type ReferenceKey } from '../references/references.js';

/** A source as a table's Source column names it, with how far it was read where it was not read itself. */
export function sourceText(key: ReferenceKey): string {
  const { cite, where, status }: Reference = references[key];
  switch (status) {
    case 'seen':
    case 'practice':
    case 'derived':
    case 'memory':
      return `${cite}, ${where}`;
    case 'copy':
      return `${cite}, ${where}, read in a copy`;
  }
}

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
