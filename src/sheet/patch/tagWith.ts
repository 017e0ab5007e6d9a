import { xmlAttribute } from '../xml/xmlText.js';

const attribute = /(\s+)([^\s=/>"']+)(\s*=\s*)("[^"]*"|'[^']*')/g;

/**
 * A start tag as written, with some attributes set (text) or removed (null); the others, their order, quotes and
 * spaces stay.
 */
export function tagWith(tag: string, changes: Readonly<Record<string, string | null>>): string {
  const left = new Map(Object.entries(changes));
  const changed = tag.replace(
    attribute,
    (whole: string, blank: string, name: string, equals: string, quoted: string) => {
      const value = left.get(name);
      if (value === undefined) return whole;
      left.delete(name);
      if (value === null) return '';
      return `${blank}${name}${equals}${quoted[0] === '"' ? `"${xmlAttribute(value)}"` : `'${xmlAttribute(value)}'`}`;
    },
  );
  const added = [...left].flatMap(([name, value]) => (value === null ? [] : [` ${name}="${xmlAttribute(value)}"`]));
  return added.length === 0 ? changed : changed.replace(/\s*\/?>$/, (end) => added.join('') + end);
}
