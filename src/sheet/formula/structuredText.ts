import type { StructuredReference } from './structuredReference.js';

/** A part of a table written out: `Log[@Copper]` as people type it, `Log[[#This Row],[Copper]]` as files hold it. */
export function structuredText({ table, parts, columns }: StructuredReference, form: 'typed' | 'stored'): string {
  const names = columns.map((column) => `[${escaped(column)}]`).join(':');
  if (form === 'typed' && parts.join() === '#This Row') {
    const [only = '', second] = columns;
    const isBare = second === undefined && /^[\p{L}\p{N}_]*$/u.test(only);
    return `${table}[@${isBare ? only : names}]`;
  }
  if (parts.length === 0) return columns.length === 1 ? `${table}${names}` : `${table}[${names}]`;
  if (parts.length === 1 && columns.length === 0) return `${table}[${parts.join()}]`;
  return `${table}[${[...parts.map((part) => `[${part}]`), ...(names === '' ? [] : [names])].join(',')}]`;
}

function escaped(column: string): string {
  return column.replace(/['[\]#@]/g, "'$&");
}
