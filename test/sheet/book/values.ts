import type { Book, BookCell } from '../../../src/sheet/book/book';
import { rangeIn } from '../../../src/sheet/address/cellRange';

export function cellAt(book: Book, address: string, sheet = 0): BookCell | undefined {
  const place = rangeIn(address)!;
  return book.sheets[sheet]?.rows[place.firstRow]?.[place.firstColumn];
}

/** Values of a sheet by address, in the order of the file. */
export function valuesOf(book: Book, sheet = 0): Record<string, unknown> {
  const values: Record<string, unknown> = {};
  book.sheets[sheet]?.rows.forEach((row, r) =>
    row?.forEach((cell, c) => {
      if (cell !== undefined) values[`${String.fromCharCode(65 + c)}${r + 1}`] = cell.value;
    }),
  );
  return values;
}
