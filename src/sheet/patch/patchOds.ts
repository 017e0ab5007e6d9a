import type { OutsideNames } from '../formula/outsideFunctions.js';
import { sharedStyles } from '../ods/readOds.js';
import { FileProblem } from '../zip/fileProblem.js';
import { type CellWrite, refuseMissingSheet, writesBySheet } from './cellWrite.js';
import { odsSheetSplices } from './ods/odsSheetSplices.js';
import { readOdsContent } from './ods/readOdsContent.js';
import { OpenParts } from './openParts.js';
import { spliced, type Splice } from './splice.js';

/** The .ods file with new values, and formulas if given, in some of its cells; all else stays byte for byte. */
export function patchOds(bytes: Uint8Array, writes: readonly CellWrite[], outside: OutsideNames): Uint8Array {
  const parts = new OpenParts(bytes);
  const xml = parts.text('content.xml');
  if (xml === undefined) throw new FileProblem('The file is damaged: the part with its sheets is missing.');
  const asked = writesBySheet(writes);
  const rows = new Map([...asked].map(([sheet, ofSheet]) => [sheet, [...ofSheet.keys()]]));
  const map = readOdsContent(xml, sharedStyles(parts), (sheet, row, count) => {
    const written = within(rows.get(sheet) ?? [], row, count).map((number) => asked.get(sheet)?.get(number));
    return written.length === 0 ? undefined : new Set(written.flatMap((ofRow) => [...(ofRow?.keys() ?? [])]));
  });
  refuseMissingSheet(asked.keys(), map.sheets);
  const splices: Splice[] = [];
  for (const [name, ofSheet] of asked) {
    const sheet = map.sheets.get(name);
    if (sheet) splices.push(...odsSheetSplices(xml, ofSheet, { map, sheet, outside }));
  }
  parts.put('content.xml', spliced(xml, splices));
  return parts.file();
}

/** Those of the ascending numbers that lie between `first` and `first + count`. */
function within(rising: readonly number[], first: number, count: number): readonly number[] {
  const start = below(rising, first);
  return rising[start] === undefined || rising[start] >= first + count
    ? []
    : rising.slice(start, below(rising, first + count));
}

/** How many of the ascending numbers are below a limit. */
function below(rising: readonly number[], limit: number): number {
  let [low, high] = [0, rising.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((rising[middle] ?? 0) < limit) low = middle + 1;
    else high = middle;
  }
  return low;
}
