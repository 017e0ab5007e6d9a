import type { Log, NumberKind, TextKind } from './log.js';

// Written out: the shape of an object put together by a loop or a spread is thrown away by each collection, and with it
// what was optimised for it.

/** The columns of numbers of a log, one after another. */
export function numbersOf(column: (kind: NumberKind) => Float64Array | null): Log['numbers'] {
  return {
    dose: column('dose'),
    change: column('change'),
    replacement: column('replacement'),
    'top-off': column('top-off'),
    salinity: column('salinity'),
    temperature: column('temperature'),
    pH: column('pH'),
    ammonia: column('ammonia'),
    volume: column('volume'),
    'hold day': column('hold day'),
  };
}

/** The columns of text of a log, one after another. */
export function textsOf(column: (kind: TextKind) => readonly string[] | null): Log['texts'] {
  return {
    'fish in': column('fish in'),
    'fish out': column('fish out'),
    dead: column('dead'),
    signs: column('signs'),
    note: column('note'),
    system: column('system'),
    lot: column('lot'),
    who: column('who'),
  };
}
