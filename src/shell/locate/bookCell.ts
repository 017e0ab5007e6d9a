import type { Cell } from '../../index.js';
import type { BookCell } from '../workbook/book.js';
import { engineCell } from './engineCell.js';

/** A cell of a book as the engine reads it. */
export function bookCell(cell: BookCell | undefined): Cell {
  return cell === undefined ? null : engineCell(cell.value);
}
