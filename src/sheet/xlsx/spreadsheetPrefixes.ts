const transitional = 'http://schemas.openxmlformats.org/';
const strict = 'http://purl.oclc.org/ooxml/';

/** The namespaces of workbook parts, in both editions of the format. */
export const spreadsheetPrefixes: ReadonlyMap<string, string> = new Map([
  [`${transitional}spreadsheetml/2006/main`, ''],
  [`${strict}spreadsheetml/main`, ''],
  [`${transitional}package/2006/relationships`, ''],
  [`${transitional}package/2006/content-types`, ''],
  [`${transitional}officeDocument/2006/relationships`, 'r'],
  [`${strict}officeDocument/relationships`, 'r'],
  ['http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray', 'xda'],
]);
