import { type Card, type Log, logBySystem, message, readLog, systemKey } from '../../engine/index.js';
import { type Book, FileProblem } from '../../sheet/index.js';
import { cellBlock, cellOf } from './cellsAt.js';
import type { FoundLog } from './found.js';
import { sheetNamed } from './sheetNamed.js';

/** Reads a log of a book once for each kind of gallon, and gives the rows of one system after another. */
export class LogReader {
  private readonly range: ReturnType<typeof cellBlock>;
  private readonly whole = new Map<Card['gallon'], Log>();
  private readonly parts = new Map<Card['gallon'], ReadonlyMap<string, Log>>();

  constructor(
    book: Book,
    private readonly log: FoundLog,
  ) {
    this.range = cellBlock(sheetNamed(book, log.sheet), log.range);
  }

  /** null: the log names no systems. */
  read(gallon: Card['gallon'], system: string | null): Log {
    const whole = this.wholeLog(gallon);
    if (this.log.systems.length < 2 || system === null) return whole;
    const parts = this.parts.get(gallon) ?? new Map(logBySystem(whole).map(({ name, log }) => [systemKey(name), log]));
    this.parts.set(gallon, parts);
    return parts.get(systemKey(system)) ?? whole;
  }

  /** Refuses rows of a log of several systems that test or treat without saying which system. */
  refuseNamelessRows(): void {
    const { texts, row, copper, numbers, count } = this.wholeLog('US');
    for (let index = 0; index < count; index++) {
      const says = copper[index] !== 0 || [numbers.dose, numbers.change].some((column) => (column?.[index] ?? NaN) > 0);
      if (!says || (texts.system?.[index] ?? '') !== '') continue;
      throw new FileProblem(
        `Sheet "${this.log.sheet}", row ${row[index] ?? ''} names no system, and the log has ${this.log.systems.length}; write the system there, or ask for one system`,
      );
    }
  }

  private wholeLog(gallon: Card['gallon']): Log {
    const before = this.whole.get(gallon);
    if (before !== undefined) return before;
    const read = readLog({
      log: { range: this.range, firstRow: this.log.range.firstRow + 1, cellOf },
      gallon,
      needs: ['time', 'copper'],
    });
    if (!read.ok) throw new FileProblem(`Sheet "${this.log.sheet}": ${message(read.problem)}`);
    this.whole.set(gallon, read.value);
    return read.value;
  }
}
