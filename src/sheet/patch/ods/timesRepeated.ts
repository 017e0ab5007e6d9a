import type { XmlAttributes } from '../../xml/readXml.js';

/** How often a row or a cell stands in the sheet. */
export function timesRepeated(known: XmlAttributes, what: 'rows' | 'columns'): number {
  const stated = Math.trunc(Number(known[`table:number-${what}-repeated`] ?? 1));
  return stated >= 1 ? stated : 1;
}
