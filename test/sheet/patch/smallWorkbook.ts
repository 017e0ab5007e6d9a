import { strToU8, unzipSync, zipSync } from 'fflate';

const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const relations = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const packageRelations = 'http://schemas.openxmlformats.org/package/2006/relationships';
const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

export interface SmallWorkbook {
  /** What stands in `<sheetData>`, or the whole part where it begins with `<?xml`. */
  readonly sheet: string | Uint8Array;
  readonly strings?: readonly string[];
  readonly date1904?: boolean;
  readonly calcChain?: string;
  readonly metadata?: string;
  /** What `<cellXfs>` holds. */
  readonly styles?: string;
  /** What stands before the fonts in the part of the styles. */
  readonly beforeFonts?: string;
}

export const plainStyles =
  '<xf numFmtId="0" fontId="0"/><xf numFmtId="14" fontId="1"/><xf numFmtId="2" fontId="1"><alignment wrapText="1"/></xf>';

/** A workbook with one sheet, `Log`, written by hand. */
export function smallWorkbook(given: SmallWorkbook): Uint8Array {
  const { sheet, strings, calcChain, metadata } = given;
  const kinds = {
    styles: 'x',
    ...(strings && { sharedStrings: 'x' }),
    ...(calcChain && { calcChain: 'x' }),
    ...(metadata && { metadata: 'x' }),
  };
  const parts: Record<string, string | Uint8Array> = {
    '[Content_Types].xml': `${head}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/><Override PartName="/xl/worksheets/sheet1.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/>${Object.keys(
      kinds,
    )
      .map(
        (kind) =>
          `<Override PartName="/xl/${kind}.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.${kind === 'metadata' ? 'sheetMetadata' : kind}+xml"/>`,
      )
      .join('')}</Types>`,
    '_rels/.rels': `${head}<Relationships xmlns="${packageRelations}"><Relationship Id="rId1" Type="${relations}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    'xl/workbook.xml': `${head}<workbook xmlns="${main}" xmlns:r="${relations}"><workbookPr${given.date1904 ? ' date1904="1"' : ''}/><sheets><sheet name="Log" sheetId="1" r:id="rId1"/></sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': `${head}<Relationships xmlns="${packageRelations}"><Relationship Id="rId1" Type="${relations}/worksheet" Target="worksheets/sheet1.xml"/>${Object.keys(
      kinds,
    )
      .map(
        (kind, index) =>
          `<Relationship Id="rId${index + 2}" Type="${relations}/${kind === 'metadata' ? 'sheetMetadata' : kind}" Target="${kind}.xml"/>`,
      )
      .join('')}</Relationships>`,
    'xl/styles.xml': `${head}<styleSheet xmlns="${main}">${given.beforeFonts ?? ''}<fonts count="2"><font/><font><b/></font></fonts><fills count="1"><fill/></fills><borders count="1"><border/></borders><cellStyleXfs count="1"><xf/></cellStyleXfs><cellXfs count="3">${given.styles ?? plainStyles}</cellXfs></styleSheet>`,
    'xl/worksheets/sheet1.xml': typeof sheet === 'string' && !sheet.startsWith('<?xml') ? sheetPart(sheet) : sheet,
  };
  if (strings)
    parts['xl/sharedStrings.xml'] =
      `${head}<sst xmlns="${main}">${strings.map((text) => `<si>${text}</si>`).join('')}</sst>`;
  if (calcChain) parts['xl/calcChain.xml'] = `${head}<calcChain xmlns="${main}">${calcChain}</calcChain>`;
  if (metadata) parts['xl/metadata.xml'] = metadata;
  const files = Object.entries(parts).map(([name, part]): [string, Uint8Array] => [
    name,
    typeof part === 'string' ? strToU8(part) : part,
  ]);
  return zipSync(Object.fromEntries(files), { mtime: new Date(2026, 2, 1) });
}

export function sheetPart(data: string): string {
  return `${head}<worksheet xmlns="${main}"><sheetData>${data}</sheetData></worksheet>`;
}

/** A part of a file as text. */
export function partIn(bytes: Uint8Array, name: string): string {
  const part = unzipSync(bytes)[name];
  if (!part) throw new Error(`no part ${name}`);
  return new TextDecoder('utf-8', { ignoreBOM: true }).decode(part);
}

/** What stands in `<sheetData>` of the small workbook. */
export function rowsIn(bytes: Uint8Array): string {
  return /<sheetData>([\s\S]*)<\/sheetData>/.exec(partIn(bytes, 'xl/worksheets/sheet1.xml'))?.[1] ?? '';
}
