import type { CellWrite } from './cellWrite.js';
import { OpenParts } from './openParts.js';
import { patchedSheet } from './patchedSheet.js';
import { refuseMissingSheet } from './refuseMissingSheet.js';
import { withoutCalcChain } from './withoutCalcChain.js';
import { workbookContext } from './workbookContext.js';
import { writesBySheet } from './writesBySheet.js';

export type { CellWrite } from './cellWrite.js';

/**
 * The workbook with new values, and where asked formulas, in some of its cells. All else stays byte for byte: other
 * parts as they are packed, and what stands around the cells in the part of a sheet.
 */
export function patchXlsx(bytes: Uint8Array, writes: readonly CellWrite[]): Uint8Array {
  const parts = new OpenParts(bytes);
  const { workbook, sheets, context } = workbookContext(parts, bytes);
  let otherFormulas = false;
  const asked = writesBySheet(writes);
  refuseMissingSheet(asked.keys(), sheets);
  for (const [name, ofSheet] of asked) {
    const part = sheets.get(name) ?? '';
    const patched = patchedSheet(parts.text(part) ?? '', part, ofSheet, context);
    parts.put(part, patched.xml);
    otherFormulas ||= patched.otherFormulas;
  }
  if (otherFormulas) withoutCalcChain(parts, workbook);
  return parts.file();
}
