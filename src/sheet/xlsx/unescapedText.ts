/** Text of a workbook part with its own escapes resolved: `_x000a_` is a line feed, `_x005f_` an underscore. */
export function unescapedText(text: string): string {
  if (!text.includes('_x')) return text;
  return text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) => String.fromCharCode(parseInt(code, 16)));
}
