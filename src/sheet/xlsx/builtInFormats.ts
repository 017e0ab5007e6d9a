/**
 * The number formats that workbooks name by number alone, as in a spreadsheet program set to English (US).
 * Source: ECMA-376-1, 18.8.30 (from memory), dates as ISO dates, so that they read the same everywhere.
 */
const builtInFormats: ReadonlyMap<number, string> = new Map([
  [1, '0'],
  [2, '0.00'],
  [3, '#,##0'],
  [4, '#,##0.00'],
  [5, '$#,##0;-$#,##0'],
  [6, '$#,##0;[Red]-$#,##0'],
  [7, '$#,##0.00;-$#,##0.00'],
  [8, '$#,##0.00;[Red]-$#,##0.00'],
  [9, '0%'],
  [10, '0.00%'],
  [11, '0.00E+00'],
  [12, '# ?/?'],
  [13, '# ??/??'],
  [14, 'yyyy-mm-dd'],
  [15, 'd-mmm-yy'],
  [16, 'd-mmm'],
  [17, 'mmm-yy'],
  [18, 'h:mm AM/PM'],
  [19, 'h:mm:ss AM/PM'],
  [20, 'h:mm'],
  [21, 'h:mm:ss'],
  [22, 'yyyy-mm-dd h:mm'],
  [27, 'yyyy-mm-dd'],
  [28, 'yyyy-mm-dd'],
  [29, 'yyyy-mm-dd'],
  [30, 'yyyy-mm-dd'],
  [31, 'yyyy-mm-dd'],
  [32, 'h:mm'],
  [33, 'h:mm:ss'],
  [34, 'h:mm'],
  [35, 'h:mm:ss'],
  [36, 'yyyy-mm-dd'],
  [37, '#,##0;-#,##0'],
  [38, '#,##0;[Red]-#,##0'],
  [39, '#,##0.00;-#,##0.00'],
  [40, '#,##0.00;[Red]-#,##0.00'],
  [45, 'mm:ss'],
  [46, '[h]:mm:ss'],
  [47, 'mm:ss.0'],
  [48, '##0.0E+0'],
  [49, '@'],
  [50, 'yyyy-mm-dd'],
  [51, 'yyyy-mm-dd'],
  [52, 'yyyy-mm-dd'],
  [53, 'yyyy-mm-dd'],
  [54, 'yyyy-mm-dd'],
  [55, 'yyyy-mm-dd'],
  [56, 'yyyy-mm-dd'],
  [57, 'yyyy-mm-dd'],
  [58, 'yyyy-mm-dd'],
]);

/** The number format of this number, a file's own before a built-in one; undefined for General. */
export function formatNumbered(number: number, own: ReadonlyMap<number, string>): string | undefined {
  const format = own.get(number) ?? builtInFormats.get(number);
  return format === undefined || format === '' || /^general$/i.test(format) ? undefined : format;
}
