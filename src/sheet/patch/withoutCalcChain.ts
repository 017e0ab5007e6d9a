import { ContentTypes } from './contentTypes.js';
import type { OpenParts } from './openParts.js';
import { Relations } from './relations.js';

/**
 * Takes away the part that lists the formulas in the order of their computing. One that names a cell without a formula
 * makes the file damaged, one that is missing is made anew when the file is opened.
 */
export function withoutCalcChain(parts: OpenParts, workbook: string): void {
  const relations = new Relations(parts, workbook);
  const chain = relations.list().find(({ kind }) => kind === 'calcChain');
  if (!chain) return;
  relations.remove(chain);
  new ContentTypes(parts).remove(chain.part);
  parts.remove(chain.part);
}
