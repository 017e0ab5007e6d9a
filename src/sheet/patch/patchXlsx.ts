import { type CellWrite, refuseMissingSheet, writesBySheet } from './cellWrite.js';
import { removeLinkedPart } from './linkedPart.js';
import { OpenParts } from './openParts.js';
import { patchedSheet } from './patchedSheet.js';
import { workbookContext } from './workbookContext.js';

/**
 * The workbook with new values, and formulas if given, in some of its cells. All else stays byte for byte: other parts
 * as they are packed, and everything around those cells in the part of their sheet.
 */
export function patchXlsx(bytes: Uint8Array, writes: readonly CellWrite[]): Uint8Array {
  const parts = new OpenParts(bytes);
  const { workbook, sheets, context } = workbookContext(parts);
  let otherFormulas = false;
  const asked = writesBySheet(writes);
  refuseMissingSheet(asked.keys(), sheets);
  for (const [name, ofSheet] of asked) {
    const part = sheets.get(name) ?? '';
    const patched = patchedSheet(parts.text(part) ?? '', part, ofSheet, context);
    parts.put(part, patched.xml);
    otherFormulas ||= patched.otherFormulas;
  }
  // The list of formulas in the order they are worked out: one that names a cell without a formula damages the file,
  // one that is missing is written again when the file is opened.
  if (otherFormulas) removeLinkedPart(parts, workbook, 'calcChain');
  return parts.file();
}
