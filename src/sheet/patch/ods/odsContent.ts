import { notInXml, xmlText } from '../../xml/xmlText.js';
import { isCellError, type CellValue } from '../../cell/cellValue.js';
import { FileProblem } from '../../zip/fileProblem.js';
import { isoOfSerial } from '../../book/isoDay.js';
import { durationOf } from '../../ods/duration.js';

const forbidden = new RegExp(notInXml);

interface OdsContent {
  /** Attributes by the names of `odsPrefixes`. */
  readonly attributes: Readonly<Record<string, string>>;
  /** What the cell shows; undefined for nothing. */
  readonly shown: string | undefined;
}

/**
 * A value as a cell of an .ods file holds it.
 * @param type What a number is: `float`, `percentage`, `currency`, `date` or `time`.
 */
export function odsContent(value: CellValue, type: string, isFormula: boolean): OdsContent {
  if (value === null) return { attributes: {}, shown: undefined };
  if (isCellError(value)) {
    const attributes = { 'office:value-type': 'string', 'office:string-value': '', 'calcext:value-type': 'error' };
    return { attributes, shown: value.basicValue };
  }
  if (typeof value === 'boolean') {
    return {
      attributes: { ...typed('boolean'), 'office:boolean-value': String(value) },
      shown: value ? 'TRUE' : 'FALSE',
    };
  }
  if (typeof value === 'number') return numberContent(value, type);
  refuseUnwritable(value);
  return { attributes: { ...typed('string'), ...(isFormula && { 'office:string-value': value }) }, shown: value };
}

function numberContent(value: number, type: string): OdsContent {
  if (!Number.isFinite(value)) throw new Error(`${value} is no value of a cell`);
  const date = type === 'date' ? isoOfSerial(value) : undefined;
  if (date !== undefined) {
    return { attributes: { ...typed(type), 'office:date-value': date }, shown: date.replace('T', ' ') };
  }
  const time = type === 'time' ? durationOf(value) : undefined;
  if (time !== undefined) {
    const shown = time.replace(/^(-?)PT(\d+)H(\d+)M([\d.]+)S$/, '$1$2:$3:$4');
    return { attributes: { ...typed(type), 'office:time-value': time }, shown };
  }
  const shown = type === 'percentage' ? `${Number((value * 100).toPrecision(15))}%` : String(value);
  const plain = type === 'percentage' || type === 'currency' ? type : 'float';
  return { attributes: { ...typed(plain), 'office:value': String(value) }, shown };
}

function typed(type: string): Record<string, string> {
  return { 'office:value-type': type, 'calcext:value-type': type };
}

function refuseUnwritable(text: string): void {
  if (!forbidden.test(text)) return;
  throw new FileProblem(
    `The text ${JSON.stringify(text.slice(0, 40))} has characters that an .ods file cannot hold: save the file as .xlsx first.`,
  );
}

/** A text as paragraphs of a cell, one a line; runs of spaces, which XML would collapse, are written as elements. */
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
