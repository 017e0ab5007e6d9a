import { type Book, cellRange, type CellValue } from '../../sheet/index.js';
import { chartXml } from './chartXml.js';
import type { TemplatePlan } from './templatePlan.js';

/** The drawings of all charts by the name of their part; the writer numbers them as the sheets have them. */
export function chartParts({ sheets }: TemplatePlan, book: Book): Map<string, Uint8Array> {
  const charts = sheets.flatMap((sheet) => sheet.charts ?? []);
  const encoder = new TextEncoder();
  return new Map(
    charts.map((chart, i) => [
      `xl/charts/chart${i + 1}.xml`,
      encoder.encode(chartXml(chart, (reference) => cellsOf(reference, book))),
    ]),
  );
}

/** The cells of one column, such as `'One system'!$B$5:$B$9`. */
function cellsOf(reference: string, book: Book): CellValue[] {
  const [, name = '', address = ''] = /^'?([^'!]+)'?!(.+)$/.exec(reference) ?? [];
  const sheet = book.sheets.find((one) => one.name === name);
  if (sheet === undefined) throw new Error(`no sheet for ${reference}`);
  const { firstRow, lastRow, firstColumn } = cellRange(address.replaceAll('$', ''));
  return Array.from(
    { length: lastRow - firstRow + 1 },
    (_, i) => sheet.rows[firstRow + i]?.[firstColumn]?.value ?? null,
  );
}
