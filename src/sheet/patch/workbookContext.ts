import { packageParts } from '../book/packageParts.js';
import { sharedStrings } from '../xlsx/sharedStrings.js';
import { workbookPart } from '../xlsx/workbookPart.js';
import { zipEntries } from '../zip/zipEntries.js';
import { DateStyles } from './dateStyles.js';
import { dynamicArrays } from './dynamicArrays.js';
import type { OpenParts } from './openParts.js';
import { Relations } from './relations.js';
import type { SheetContext } from './sheetContext.js';

interface WorkbookContext {
  /** The name of the part that lists the sheets. */
  readonly workbook: string;
  /** The part of each sheet by its name. */
  readonly sheets: ReadonlyMap<string, string>;
  readonly context: Omit<SheetContext, 'isFilled' | 'masters' | 'heirs'>;
}

/** What cells need to know of their workbook; texts and metadata are read when a cell first asks. */
export function workbookContext(parts: OpenParts, bytes: Uint8Array): WorkbookContext {
  const packed = packageParts(bytes, zipEntries(bytes));
  const { sheets, date1904 } = workbookPart(packed);
  const workbook = new Relations(parts, '').partOf('officeDocument') ?? 'xl/workbook.xml';
  const relations = new Relations(parts, workbook);
  let texts: readonly string[] | undefined;
  let mark: string | undefined;
  const textsOf = (part: string | undefined): readonly string[] => {
    const ofPart = part === undefined ? undefined : packed.bytes(part);
    return part === undefined || ofPart === undefined ? [] : sharedStrings(ofPart, part);
  };
  return {
    workbook,
    sheets: new Map(sheets.map(({ name, part }) => [name, part])),
    context: {
      date1904,
      dateStyles: new DateStyles(parts, relations.partOf('styles')),
      sharedText: (index) => (texts ??= textsOf(relations.partOf('sharedStrings')))[index],
      dynamicMark: () => (mark ??= dynamicArrays(parts, workbook)),
    },
  };
}
