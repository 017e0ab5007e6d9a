import type { ReferenceKey } from '../../../src/engine/references/references.js';

/** A table as its source prints it: numbers stay text, so that the last printed place says how exact they are. */
export interface PublishedTable {
  readonly source: { readonly key: ReferenceKey; readonly at: string };
  /** Units and bases the columns are in. */
  readonly basis: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** Recorded, never deleted: the row as printed stays in `rows`. */
  readonly misprints: readonly {
    readonly row: number;
    readonly printed: string;
    readonly shouldBe: string;
    readonly why: string;
  }[];
}

/** Half a unit of the last printed place: "0.963" gives 0.0005. */
export function halfUnit(printed: string): number {
  const [, decimals = ''] = printed.split('.');
  return 0.5 * 10 ** -decimals.length;
}

/** The number agrees with the printed one to the last printed place. */
export function expectPrinted(computed: number, printed: string): void {
  // The least allowance above half a unit: the printed decimal is itself not exact in binary.
  expect(Math.abs(computed - Number(printed))).toBeLessThanOrEqual(halfUnit(printed) * (1 + 1e-9));
}

/** Every row of a table as numbers, beside the printed text. */
export function eachRow(
  table: PublishedTable,
  check: (numbers: readonly number[], printed: readonly string[]) => void,
): void {
  expect(table.rows.length).toBeGreaterThan(0);
  for (const row of table.rows) {
    expect(row).toHaveLength(table.columns.length);
    check(row.map(Number), row);
  }
}
