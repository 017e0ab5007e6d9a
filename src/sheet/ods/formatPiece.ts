import type { XmlAttributes } from '../xml/walkXml.js';

/** One step of a number format as an .ods file writes it, in the letters of a format code; undefined for what has none. */
export function formatPiece(element: string, attributes: XmlAttributes): string | undefined {
  const long = attributes['number:style'] === 'long';
  switch (element) {
    case 'number:year':
      return long ? 'yyyy' : 'yy';
    case 'number:month':
      return (attributes['number:textual'] === 'true' ? 'mmm' : 'm') + (long ? 'm' : '');
    case 'number:day':
      return long ? 'dd' : 'd';
    case 'number:day-of-week':
      return long ? 'dddd' : 'ddd';
    case 'number:hours':
      return long ? 'hh' : 'h';
    case 'number:minutes':
      return long ? 'mm' : 'm';
    case 'number:seconds':
      return (long ? 'ss' : 's') + fraction(count(attributes, 'number:decimal-places', 0), 0);
    case 'number:am-pm':
      return 'AM/PM';
    case 'number:text-content':
      return '@';
    case 'number:number':
      return digits(attributes);
    case 'number:scientific-number':
      return `${digits(attributes)}E+${'0'.repeat(count(attributes, 'number:min-exponent-digits', 2))}`;
    default:
      return undefined;
  }
}

function digits(attributes: XmlAttributes): string {
  const whole = '0'.repeat(count(attributes, 'number:min-integer-digits', 1)) || '#';
  const grouped = attributes['number:grouping'] === 'true' ? `#,${whole.padStart(3, '#')}` : whole;
  const places = count(attributes, 'number:decimal-places', 0);
  return grouped + fraction(count(attributes, 'number:min-decimal-places', places), places);
}

function fraction(always: number, most: number): string {
  return always > 0 || most > 0 ? `.${'0'.repeat(always)}${'#'.repeat(Math.max(0, most - always))}` : '';
}

function count(attributes: XmlAttributes, name: string, otherwise: number): number {
  const stated = attributes[name];
  const number = stated === undefined ? otherwise : Number(stated);
  return number >= 0 && number <= 30 ? Math.trunc(number) : otherwise;
}
