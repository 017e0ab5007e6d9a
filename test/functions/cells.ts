import { HostError, type CellIn } from '../host/standInHost.js';

/** A column of cells as the host hands it over. */
export const column = (...cells: readonly CellIn[]): CellIn[][] => cells.map((cell) => [cell]);

/** A row of cells. */
export const row = (...cells: readonly CellIn[]): CellIn[][] => [[...cells]];

/** An error cell in the two shapes in which it can arrive. */
export const errorCells: readonly CellIn[] = [{ type: 'Error', basicValue: '#N/A' }, new HostError('#N/A')];
