import type { CellLook } from '../book/cellLook.js';
import type { CellCount } from '../book/sheetGrid.js';
import type { Colours } from './colourOf.js';

/** What the sheets of a workbook share. */
export interface SharedParts {
  readonly strings: readonly string[];
  readonly formats: readonly (string | undefined)[];
  /** Values of `cm` that mark a dynamic array. */
  readonly dynamic: ReadonlySet<string>;
  readonly date1904: boolean;
  readonly count: CellCount;
  /** Where looks were asked for. */
  readonly looks?: readonly CellLook[];
  readonly colours?: Colours;
}
