import { strToU8, zipSync } from 'fflate';

const uri = (word: string): string => `urn:oasis:names:tc:opendocument:xmlns:${word}:1.0`;
export const calcext = 'xmlns:calcext="urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0"';
const names = ['office', 'table', 'text', 'style'].map((word) => `xmlns:${word}="${uri(word)}"`).join(' ');

/** The content of an .ods file with one sheet, `Log`. */
export function odsContentPart(rows: string, declared = calcext): string {
  return (
    `<?xml version="1.0" encoding="UTF-8"?>\n<office:document-content ${names} xmlns:number="${uri('datastyle')}" ${declared}>` +
    '<office:automatic-styles><number:date-style style:name="N1"><number:year number:style="long"/><number:text>-</number:text><number:month number:style="long"/></number:date-style>' +
    '<style:style style:name="day" style:family="table-cell" style:data-style-name="N1"/></office:automatic-styles>' +
    '<office:body><office:spreadsheet><table:calculation-settings/><table:table table:name="Log"><table:table-column table:number-columns-repeated="2"/>' +
    '<table:table-column table:default-cell-style-name="day"/>' +
    `${rows}<table:named-expressions/></table:table></office:spreadsheet></office:body></office:document-content>`
  );
}

export function smallOds(content: string): Uint8Array {
  const manifest = `<?xml version="1.0"?><manifest:manifest xmlns:manifest="${uri('manifest')}"/>`;
  return zipSync(
    {
      mimetype: [strToU8('application/vnd.oasis.opendocument.spreadsheet'), { level: 0 }],
      'content.xml': strToU8(content),
      'META-INF/manifest.xml': strToU8(manifest),
    },
    { mtime: new Date(2026, 2, 1) },
  );
}
