import type { CellValue } from '../cell/cellValue.js';
import { serialOfIso } from '../book/isoDay.js';
import type { XmlAttributes } from '../xml/walkXml.js';
import { daysOfDuration } from './duration.js';

/** The value of a cell, and a format for days and times that have none of their own. */
interface OdsValue {
  readonly value: CellValue;
  readonly format?: string;
}

/** What a cell shows, undefined without any text, and the number format of its style. */
export interface Look {
  readonly shown: string | undefined;
  readonly format: string | undefined;
}

export function odsValue(attributes: XmlAttributes, look: Look): OdsValue {
  const { shown } = look;
  if (attributes['calcext:value-type'] === 'error') return { value: errorOf(shown ?? '') };
  const type = attributes['office:value-type'];
  switch (type) {
    case 'float':
    case 'percentage':
    case 'currency':
      return { value: numberOf(attributes['office:value'], look) };
    case 'date': {
      const text = attributes['office:date-value'] ?? '';
      return { value: serialOfIso(text) ?? text, format: text.includes('T') ? 'yyyy-mm-dd hh:mm' : 'yyyy-mm-dd' };
    }
    case 'time': {
      const text = attributes['office:time-value'] ?? '';
      return { value: daysOfDuration(text) ?? text, format: '[hh]:mm:ss' };
    }
    case 'boolean':
      return { value: attributes['office:boolean-value'] === 'true' };
    case 'string':
      return { value: attributes['office:string-value'] ?? shown ?? '' };
    case undefined:
    default:
      return { value: shown ?? null };
  }
}

/** A number without a format that shows letters is how LibreOffice writes TRUE and FALSE, in its own language. */
function numberOf(stated: string | undefined, look: Look): CellValue {
  if (stated === undefined || stated.trim() === '') return look.shown ?? null;
  const number = Number(stated);
  if (!Number.isFinite(number)) return stated;
  const words = look.format === undefined && /^\p{L}+$/u.test(look.shown ?? '');
  return words && (number === 0 || number === 1) ? number === 1 : number;
}

/** A program's own numbered errors are all faults in a formula or its arguments. */
function errorOf(shown: string): CellValue {
  return { type: 'Error', basicValue: shown.startsWith('#') ? shown : '#VALUE!' };
}
