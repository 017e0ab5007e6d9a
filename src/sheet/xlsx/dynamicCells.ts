import { bookLimits } from '../book/bookLimits.js';
import { walkXml } from '../xml/walkXml.js';
import { spreadsheetPrefixes } from './spreadsheetPrefixes.js';

/** The values of a cell's `cm` that mark its formula as one that may grow and shrink; the metadata count from 1. */
export function dynamicCells(bytes: Uint8Array, part: string): ReadonlySet<string> {
  const marks = new Set<string>();
  const types: string[] = [];
  let inCells = false;
  let blocks = 0;
  walkXml(bytes, part, {
    prefixes: spreadsheetPrefixes,
    open: (element, attributes) => {
      if (element === 'metadataType' && types.length < bookLimits.listed) types.push(attributes['name'] ?? '');
      else if (element === 'cellMetadata') inCells = true;
      else if (element === 'bk' && inCells) blocks++;
      else if (element === 'rc' && inCells && types[Number(attributes['t']) - 1] === 'XLDAPR') {
        if (marks.size < bookLimits.listed) marks.add(String(blocks));
      }
    },
    close: (element) => {
      if (element === 'cellMetadata') inCells = false;
    },
  });
  return marks;
}
