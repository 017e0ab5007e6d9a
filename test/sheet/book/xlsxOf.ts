import { zipSync } from 'fflate';

const office = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const packaged = 'http://schemas.openxmlformats.org/package/2006';
const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';

export const spreadsheetNamespace = main;

export interface XlsxPlan {
  /** What stands inside `sheetData`, by the name of the sheet. */
  readonly sheets: Readonly<Record<string, string>> | readonly (readonly [name: string, rows: string])[];
  /** What follows `sheetData` of the first sheet. */
  readonly after?: string;
  /** What precedes it. */
  readonly before?: string;
  readonly strings?: string;
  /** Format codes: cell style 1 is the first of them. */
  readonly formats?: readonly string[];
  readonly names?: string;
  readonly date1904?: boolean;
  readonly metadata?: string;
  /** Inside `table` elements of the first sheet. */
  readonly tables?: readonly string[];
  /** Parts that replace or join the others. */
  readonly parts?: Readonly<Record<string, string | Uint8Array>>;
  readonly absolute?: boolean;
}

/** A workbook written by hand, so that a test sees every letter of it. */
export function xlsxOf(plan: XlsxPlan): Uint8Array {
  const sheets = Array.isArray(plan.sheets) ? (plan.sheets as [string, string][]) : Object.entries(plan.sheets);
  const root = plan.absolute === true ? '/xl/' : '';
  const parts: Record<string, string | Uint8Array> = {
    '[Content_Types].xml': contentTypes(sheets.length, plan),
    '_rels/.rels': relations([
      ['rId1', 'officeDocument', plan.absolute === true ? '/xl/workbook.xml' : 'xl/workbook.xml'],
    ]),
    'xl/workbook.xml': workbook(sheets, plan),
    'xl/_rels/workbook.xml.rels': relations([
      ...sheets.map((_, index) => [`rId${index + 1}`, 'worksheet', `${root}worksheets/sheet${index + 1}.xml`] as const),
      ['rIdS', 'styles', `${root}styles.xml`],
      ['rIdT', 'sharedStrings', `${root}sharedStrings.xml`],
      ['rIdM', 'sheetMetadata', `${root}metadata.xml`],
    ]),
    'xl/styles.xml': styles(plan.formats ?? []),
    'xl/sharedStrings.xml': `<sst xmlns="${main}">${plan.strings ?? ''}</sst>`,
    'xl/metadata.xml': plan.metadata ?? `<metadata xmlns="${main}"/>`,
  };
  sheets.forEach(([, rows], index) => {
    const first = index === 0;
    const tables = first ? (plan.tables ?? []) : [];
    const tableParts = tables.map((_, n) => `<tablePart r:id="t${n + 1}"/>`).join('');
    parts[`xl/worksheets/sheet${index + 1}.xml`] =
      `<worksheet xmlns="${main}" xmlns:r="${office}">${first ? (plan.before ?? '') : ''}<sheetData>${rows}</sheetData>` +
      `${first ? (plan.after ?? '') : ''}<tableParts>${tableParts}</tableParts></worksheet>`;
    if (tables.length === 0) return;
    const links = tables.map((_, n) => [`t${n + 1}`, 'table', `../tables/table${n + 1}.xml`] as const);
    parts[`xl/worksheets/_rels/sheet${index + 1}.xml.rels`] = relations(links);
    tables.forEach(
      (table, n) => (parts[`xl/tables/table${n + 1}.xml`] = table.replace('<table ', `<table xmlns="${main}" `)),
    );
  });
  Object.assign(parts, plan.parts);
  return zipped(parts);
}

export function zipped(parts: Readonly<Record<string, string | Uint8Array>>): Uint8Array {
  const encoder = new TextEncoder();
  const bytes = Object.entries(parts).map(
    ([name, part]) => [name, typeof part === 'string' ? encoder.encode(part) : part] as const,
  );
  return zipSync(Object.fromEntries(bytes));
}

function workbook(sheets: readonly (readonly [string, string])[], plan: XlsxPlan): string {
  const listed = sheets.map(([name], index) => `<sheet name="${name}" sheetId="${index + 1}" r:id="rId${index + 1}"/>`);
  return (
    `<?xml version="1.0" encoding="UTF-8"?><workbook xmlns="${main}" xmlns:r="${office}">` +
    `<workbookPr${plan.date1904 === true ? ' date1904="1"' : ''}/><sheets>${listed.join('')}</sheets>` +
    `<definedNames>${plan.names ?? ''}</definedNames></workbook>`
  );
}

function relations(links: readonly (readonly [id: string, type: string, target: string])[]): string {
  const all = links.map(
    ([id, type, target]) => `<Relationship Id="${id}" Type="${office}/${type}" Target="${target}"/>`,
  );
  return `<Relationships xmlns="${packaged}/relationships">${all.join('')}</Relationships>`;
}

function styles(formats: readonly string[]): string {
  const codes = formats.map((code, index) => `<numFmt numFmtId="${170 + index}" formatCode="${code}"/>`);
  const cells = formats.map((_, index) => `<xf numFmtId="${170 + index}"/>`);
  return `<styleSheet xmlns="${main}"><numFmts>${codes.join('')}</numFmts><cellStyleXfs><xf numFmtId="9"/></cellStyleXfs><cellXfs><xf numFmtId="0"/>${cells.join('')}</cellXfs></styleSheet>`;
}

function contentTypes(sheets: number, plan: XlsxPlan): string {
  const sheetType = 'application/vnd.openxmlformats-officedocument.spreadsheetml';
  const parts: [string, string][] = [
    ['workbook.xml', 'sheet.main'],
    ['styles.xml', 'styles'],
    ['sharedStrings.xml', 'sharedStrings'],
    ['metadata.xml', 'sheetMetadata'],
    ...Array.from({ length: sheets }, (_, n): [string, string] => [`worksheets/sheet${n + 1}.xml`, 'worksheet']),
    ...(plan.tables ?? []).map((_, n): [string, string] => [`tables/table${n + 1}.xml`, 'table']),
  ];
  const overrides = parts.map(
    ([name, type]) => `<Override PartName="/xl/${name}" ContentType="${sheetType}.${type}+xml"/>`,
  );
  return (
    `<Types xmlns="${packaged}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>` +
    `<Default Extension="xml" ContentType="application/xml"/>${overrides.join('')}</Types>`
  );
}
