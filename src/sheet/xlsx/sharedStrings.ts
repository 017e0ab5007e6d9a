import { FileProblem } from '../zip/fileProblem.js';
import { bookLimits } from '../book/bookLimits.js';
import { readXml } from '../xml/readXml.js';
import { spreadsheetPrefixes } from './spreadsheetPrefixes.js';
import { unescapedText } from './unescapedText.js';

/** The texts that cells point to by number; of rich text the letters alone, of readings aloud nothing. */
export function sharedStrings(bytes: Uint8Array, part: string): string[] {
  const strings: string[] = [];
  let text = '';
  let inText = false;
  let aloud = 0;
  readXml(bytes, part, {
    prefixes: spreadsheetPrefixes,
    open: (element) => {
      if (element === 'si') text = '';
      else if (element === 'rPh') aloud++;
      else if (element === 't') inText = aloud === 0;
    },
    text: (piece) => {
      if (inText) text += piece;
    },
    close: (element) => {
      if (element === 't') inText = false;
      else if (element === 'rPh') aloud--;
      else if (element === 'si') {
        if (strings.length === bookLimits.cells)
          throw new FileProblem('The file holds more texts than a log can have.');
        strings.push(unescapedText(text));
      }
    },
  });
  return strings;
}
