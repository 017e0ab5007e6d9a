import type { Cell } from '../../units/cell.js';
import type { Millilitres } from '../../units/quantity.js';
import { dosedVolumeIn, quantityReader } from '../../units/readers/quantityReaders.js';
import { named, unlessBlankOrZero, type Reader } from '../../units/readers/reader.js';
import type { CardName } from './cardNames.js';

type CardCell = (name: CardName) => Cell;
type ReadOn = <T, F>(name: CardName, read: (given: Cell) => Reader<T>, fallback: F) => Reader<T | F>;

/** Reads a value of the card by its name; a refusal calls it by card and name. */
export function readerOn(cell: CardCell, label: string): ReadOn {
  return (name, read, fallback) => named(`${label} ${name}`, unlessBlankOrZero(cell(name), read, fallback));
}

const plainIn = quantityReader('plain', { min: 0 }, (x) => x);

/** In any currency: what stands around the number is left out. */
const priceIn = (cell: Cell) => plainIn(typeof cell === 'string' ? cell.replace(/[^\d.,]+/g, '') : cell);

interface Shelf {
  readonly bottle: Reader<Millilitres | null>;
  readonly bottlePrice: Reader<number | null>;
  readonly testsLeft: Reader<number | null>;
  readonly testPrice: Reader<number | null>;
}

/** What the card says of the solution and the tests on the shelf. */
export function shelfReaders(cell: CardCell, label: string): Shelf {
  const on = readerOn(cell, label);
  return {
    bottle: on('bottle mL', dosedVolumeIn, null),
    bottlePrice: on('bottle price', priceIn, null),
    testsLeft: on('tests left', plainIn, null),
    testPrice: on('test price', priceIn, null),
  };
}
