import { sharedStrings } from '../xlsx/sharedStrings.js';
import { workbookPart } from '../xlsx/workbookPart.js';
import { DateStyles } from './dateStyles.js';
import { dynamicMark } from './dynamicMark.js';
import type { OpenParts } from './openParts.js';
import type { CellAt } from './sheetMap.js';

/** What the cells of one sheet need to know of the rest of the file. */
export interface SheetContext {
  readonly date1904: boolean;
  readonly dateStyles: DateStyles;
  sharedTexts(): readonly string[];
  /** The attribute `cm` of a cell whose formula is a dynamic array. */
  dynamicMark(): string;
  /** Whether the formula of another cell fills this one after all writes. */
  isFilled(row: number, column: number): boolean;
  /** The cell of each shared formula that has its text, by its number. */
  readonly masters: ReadonlyMap<string, CellAt>;
  /** `<f>` of cells that take over a shared formula from a cell that loses it. */
  readonly heirs: ReadonlyMap<CellAt, string>;
}

interface WorkbookContext {
  /** The name of the part that lists the sheets. */
  readonly workbook: string;
  /** The part of each sheet by its name. */
  readonly sheets: ReadonlyMap<string, string>;
  readonly context: Omit<SheetContext, 'isFilled' | 'masters' | 'heirs'>;
}

/** What cells need to know of their workbook; texts and metadata are read when first needed. */
export function workbookContext(parts: OpenParts): WorkbookContext {
  const { part: workbook, sheets, date1904, relations } = workbookPart(parts);
  const partOfType = (type: string): string | undefined => relations.find((relation) => relation.type === type)?.part;
  let texts: readonly string[] | undefined;
  let mark: string | undefined;
  const textsOf = (part = ''): readonly string[] => {
    const bytes = parts.bytes(part);
    return bytes === undefined ? [] : sharedStrings(bytes, part);
  };
  return {
    workbook,
    sheets: new Map(sheets.map(({ name, part }) => [name, part])),
    context: {
      date1904,
      dateStyles: new DateStyles(parts, partOfType('styles')),
      sharedTexts: () => (texts ??= textsOf(partOfType('sharedStrings'))),
      dynamicMark: () => (mark ??= dynamicMark(parts, workbook)),
    },
  };
}
