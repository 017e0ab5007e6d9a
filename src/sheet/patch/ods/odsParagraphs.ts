import { xmlText } from '../../xml/xmlText.js';

/** A text as paragraphs of a cell: lines apart, blanks that would melt together written as elements. */
export function odsParagraphs(text: string, prefix: string): string {
  return text
    .split('\n')
    .map((line) => `<${prefix}p>${lineXml(line, prefix)}</${prefix}p>`)
    .join('');
}

function lineXml(line: string, prefix: string): string {
  return xmlText(line)
    .replace(/^ +| {2,}| +$/g, (blanks) => `<${prefix}s${blanks.length > 1 ? ` ${prefix}c="${blanks.length}"` : ''}/>`)
    .replace(/\t/g, `<${prefix}tab/>`);
}
