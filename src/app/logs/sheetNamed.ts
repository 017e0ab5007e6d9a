import { type Book, type BookSheet, FileProblem } from '../../sheet/index.js';

/** The sheet of that name, case aside; another name is refused with those there are. */
export function sheetNamed(book: Book, wanted: string): BookSheet {
  const found = book.sheets.find(({ name }) => isSameName(name, wanted));
  if (found !== undefined) return found;
  const names = book.sheets.map(({ name }) => `"${name}"`).join(', ');
  throw new FileProblem(`There is no sheet "${wanted}"; the file has ${names}`);
}

/** Names of sheets, ranges and tables are compared without case. */
export function isSameName(one: string, other: string): boolean {
  return one.trim().toLowerCase() === other.trim().toLowerCase();
}
