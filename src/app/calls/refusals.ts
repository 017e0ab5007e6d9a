/** The sentence behind each cell that a function refused, kept until the cell is computed again. */
export class Refusals {
  private readonly messages = new Map<string, { readonly run: number; readonly message: string }>();
  private run = 0;

  /** A recalculation begins: what a cell said before no longer counts once it is computed again. */
  startRun(): void {
    this.run += 1;
  }

  /** Of several calls in one cell the first refusal is kept: it is the one the cell shows. */
  note(cell: string, message: string): void {
    if (this.messages.get(cell)?.run !== this.run) this.messages.set(cell, { run: this.run, message });
  }

  /** A call in this cell went well: a sentence of an earlier run is out of date. */
  clear(cell: string): void {
    if (this.messages.get(cell)?.run !== this.run) this.messages.delete(cell);
  }

  reason(cell: string): string | undefined {
    return this.messages.get(cell)?.message;
  }

  static cell(sheet: string, row: number, column: number): string {
    return `${sheet}!${row},${column}`;
  }
}
