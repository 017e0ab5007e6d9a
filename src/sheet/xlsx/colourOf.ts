import type { XmlAttributes } from '../xml/walkXml.js';
import { tinted } from './tinted.js';

/** The usual colours by number; 0 to 7 repeat the colours from 8 on. A workbook may bring its own. */
const listed =
  '000000 ffffff ff0000 00ff00 0000ff ffff00 ff00ff 00ffff 800000 008000 000080 808000 800080 008080 c0c0c0 808080 ' +
  '9999ff 993366 ffffcc ccffff 660066 ff8080 0066cc ccccff 000080 ff00ff ffff00 00ffff 800080 800000 008080 0000ff ' +
  '00ccff ccffff ccffcc ffff99 99ccff ff99cc cc99ff ffcc99 3366ff 33cccc 99cc00 ffcc00 ff9900 ff6600 666699 969696 ' +
  '003366 339966 003300 333300 993300 993366 333399 333333';

const colours = listed.split(' ').map((digits) => `#${digits}`);

const indexedColours: readonly string[] = [...colours.slice(0, 8), ...colours];

/** The colours that a workbook names by number. */
export interface Colours {
  readonly theme: readonly (string | undefined)[];
  /** Its own in place of the usual ones. */
  readonly indexed: readonly (string | undefined)[];
}

/** The colour that an element of a style sheet names; undefined where the program is to choose. */
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

/** `#rrggbb` of a colour written with six or, its opacity first, eight digits; undefined for anything else. */
export function colourDigits(text: string | undefined): string | undefined {
  return /^(?:[0-9a-f]{2})?[0-9a-f]{6}$/i.test(text ?? '') ? `#${text?.slice(-6).toLowerCase()}` : undefined;
}
