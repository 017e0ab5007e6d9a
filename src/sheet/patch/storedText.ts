import { contentEscaped } from './contentEscaped.js';

// Control characters, the two that are no characters, and halves of pairs cannot stand in XML.
const noCharacter =
  '[\\u0000-\\u0008\\u000b-\\u001f\\ufffe\\uffff]|[\\ud800-\\udbff](?![\\udc00-\\udfff])|(?<![\\ud800-\\udbff])[\\udc00-\\udfff]';
const forbidden = new RegExp(noCharacter, 'g');
const likeEscape = new RegExp(`_(?=x[0-9a-fA-F]{4}(?:_|${noCharacter}))`, 'g');

/**
 * Text as the content of an element of a sheet: what XML cannot hold is written `_x0007_`, and text that looks like
 * that `_x005F_x0007_`.
 */
export function storedText(text: string): string {
  const kept = text.replace(likeEscape, '_x005F_');
  return contentEscaped(kept.replace(forbidden, (character) => `_x${hex(character.charCodeAt(0))}_`));
}

function hex(code: number): string {
  return code.toString(16).toUpperCase().padStart(4, '0');
}
