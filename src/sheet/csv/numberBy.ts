/** What stands before the decimals. */
export type DecimalMark = '.' | ',';

/** The number a text is, once the mark before its decimals is known. */
export function numberBy(text: string, mark: DecimalMark): number {
  const digits = text
    .trim()
    .replace('\u2212', '-')
    .replace(mark === ',' ? /[.'\u2019\u00a0\u202f]/g : /[,'\u2019\u00a0\u202f]/g, '');
  return Number(digits.replace(',', '.'));
}
