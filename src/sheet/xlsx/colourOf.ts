import type { XmlAttributes } from '../xml/walkXml.js';
import { colourDigits } from './colourDigits.js';
import { indexedColours } from './indexedColours.js';
import { tinted } from './tinted.js';

/** The colours that a workbook names by number. */
export interface Colours {
  readonly theme: readonly (string | undefined)[];
  /** Its own in place of the usual ones. */
  readonly indexed: readonly (string | undefined)[];
}

/** The colour that an element of a style sheet names; undefined where it leaves it to the program. */
export function colourOf(named: XmlAttributes | undefined, { theme, indexed }: Colours): string | undefined {
  if (named === undefined) return undefined;
  const number = (name: string): number => Number(named[name] ?? NaN);
  const plain =
    colourDigits(named['rgb']) ??
    theme[number('theme')] ??
    indexed[number('indexed')] ??
    indexedColours[number('indexed')];
  return plain === undefined ? undefined : tinted(plain, number('tint'));
}
