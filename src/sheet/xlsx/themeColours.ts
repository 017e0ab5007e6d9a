import { walkXml } from '../xml/walkXml.js';
import { colourDigits } from './colourOf.js';

const prefixes: ReadonlyMap<string, string> = new Map([
  ['http://schemas.openxmlformats.org/drawingml/2006/main', ''],
  ['http://purl.oclc.org/ooxml/drawingml/main', ''],
]);

/** The order in which cells number them; the file lists them in a slightly different one. */
const counted = ['lt1', 'dk1', 'lt2', 'dk2', 'accent1', 'accent2', 'accent3', 'accent4', 'accent5', 'accent6'];
const links = ['hlink', 'folHlink'];

/** The colours of a workbook's theme, by the numbers that cells use. */
export function themeColours(bytes: Uint8Array, part: string): (string | undefined)[] {
  const colours = new Map<string, string>([
    ['lt1', '#ffffff'],
    ['dk1', '#000000'],
  ]);
  let inScheme = false;
  let role = '';
  walkXml(bytes, part, {
    prefixes,
    open: (element, attributes) => {
      if (element === 'clrScheme') inScheme = true;
      else if (!inScheme) return;
      else if (element === 'srgbClr') put(attributes['val']);
      else if (element === 'sysClr') put(attributes['lastClr']);
      else if (counted.includes(element) || links.includes(element)) role = element;
    },
    close: (element) => {
      if (element === 'clrScheme') inScheme = false;
    },
  });
  return [...counted, ...links].map((name) => colours.get(name));

  function put(text: string | undefined): void {
    const colour = colourDigits(text);
    if (role !== '' && colour !== undefined) colours.set(role, colour);
  }
}
