import type { DefinedName } from '../book/book.js';

/** The defined name that a word means in a sheet: `Sheet2!band` is that sheet's, else the own sheet's goes before the book's. */
export function nameIn(
  text: string,
  { sheet, names }: { readonly sheet: string; readonly names: readonly DefinedName[] },
): DefinedName | undefined {
  const bang = text.lastIndexOf('!');
  const named = bang < 0 ? sheet : text.slice(0, bang).replace(/^'|'$/g, '').replaceAll("''", "'");
  const word = text.slice(bang + 1).toLowerCase();
  const alike = names.filter(({ name }) => name.toLowerCase() === word);
  return (
    alike.find((one) => one.sheet?.toLowerCase() === named.toLowerCase()) ??
    alike.find((one) => one.sheet === undefined)
  );
}
