import { notInXml, xmlText } from '../xml/xmlText.js';

const forbidden = new RegExp(`${notInXml}|\\r`, 'g');
const likeEscape = new RegExp(`_(?=x[0-9a-fA-F]{4}(?:_|${notInXml}|\\r))`, 'g');

/**
 * Text as the content of an element of a workbook part: what XML cannot hold is written `_x0007_`, and text that looks
 * like that `_x005F_x0007_`.
 */
export function escapedText(text: string): string {
  const kept = text.replace(likeEscape, '_x005F_');
  return xmlText(kept.replace(forbidden, (character) => `_x${hex(character.charCodeAt(0))}_`));
}

function hex(code: number): string {
  return code.toString(16).toUpperCase().padStart(4, '0');
}

/** Text of a workbook part with its escapes resolved: `_x000a_` is a line feed, `_x005f_` an underscore. */
export function unescapedText(text: string): string {
  if (!text.includes('_x')) return text;
  return text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) => String.fromCharCode(parseInt(code, 16)));
}
