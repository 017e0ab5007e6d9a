import { bookLimits } from '../book/bookLimits.js';
import { walkXml } from '../xml/walkXml.js';
import { builtInFormats } from './builtInFormats.js';
import { spreadsheetPrefixes } from './spreadsheetPrefixes.js';

/** The number format of each cell style by its number; undefined for General. */
export function cellFormats(bytes: Uint8Array, part: string): (string | undefined)[] {
  const own = new Map<number, string>();
  const numbers: number[] = [];
  let inCells = false;
  walkXml(bytes, part, {
    prefixes: spreadsheetPrefixes,
    open: (element, attributes) => {
      if (element === 'cellXfs') inCells = true;
      else if (element === 'numFmt') own.set(Number(attributes['numFmtId']), attributes['formatCode'] ?? '');
      else if (element === 'xf' && inCells && numbers.length < bookLimits.listed) {
        numbers.push(Number(attributes['numFmtId'] ?? 0));
      }
    },
    close: (element) => {
      if (element === 'cellXfs') inCells = false;
    },
  });
  return numbers.map((number) => {
    const format = own.get(number) ?? builtInFormats.get(number);
    return format === undefined || format === '' || /^general$/i.test(format) ? undefined : format;
  });
}
