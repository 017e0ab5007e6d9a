import type { CellRange } from '../address/cellRange.js';
import type { StoredFormula, TypedFormula } from '../cell/formulaText.js';
import { formulaTokens } from './formulaTokens.js';
import { typedName } from './functionName.js';
import { parameterTokens } from './parameterTokens.js';
import { readReference } from './plainReference.js';

interface ReadRange {
  /** undefined: the sheet of the formula. */
  readonly sheet?: string;
  readonly range: CellRange;
}

/** What a formula with plain references reads, as far as its text says. */
export interface FoundReferences {
  readonly ranges: readonly ReadRange[];
  /** Whether it can read cells that no reference in it shows: through OFFSET, INDIRECT, `G1#` or a name with no meaning. */
  readonly more: boolean;
}

const reachingFarther = new Set(['OFFSET', 'INDIRECT', 'ANCHORARRAY']);

/** The ranges that a formula names as plain references: see `plainReferences` for what else stands for cells. */
export function referencesIn(formula: StoredFormula | TypedFormula): FoundReferences {
  const ranges: ReadRange[] = [];
  let more = false;
  const tokens = formulaTokens(formula);
  const parameters = parameterTokens(tokens);
  for (const [i, { kind, text }] of tokens.entries()) {
    if (parameters.has(i)) continue;
    if (kind === 'reference') {
      const found = readReference(text);
      if (found !== undefined) {
        ranges.push({ range: found.range, ...(found.sheet === undefined ? {} : { sheet: found.sheet }) });
      }
    } else if (kind === 'function') more ||= reachingFarther.has(typedName(text));
    else if (kind === 'operator') more ||= text === ':' || text === '#';
    else more ||= kind === 'name' || kind === 'table' || kind === 'outside';
  }
  return { ranges, more };
}
