import { FileProblem } from '../zip/fileProblem.js';
import { bookLimits } from '../book/bookLimits.js';
import { walkXml } from '../xml/walkXml.js';
import { unescapedText } from './escapedText.js';
import { RichText } from './richText.js';
import { spreadsheetPrefixes } from './spreadsheetPrefixes.js';

/** The texts that cells point to by number. */
export function sharedStrings(bytes: Uint8Array, part: string): string[] {
  const strings: string[] = [];
  let rich = new RichText();
  walkXml(bytes, part, {
    prefixes: spreadsheetPrefixes,
    open: (element) => {
      if (element === 'si') rich = new RichText();
      else rich.open(element);
    },
    text: (text) => rich.add(text),
    close: (element) => {
      rich.close(element);
      if (element !== 'si') return;
      if (strings.length === bookLimits.cells)
        throw new FileProblem('The file holds more texts than a workbook can have.');
      strings.push(unescapedText(rich.text));
    },
  });
  return strings;
}
