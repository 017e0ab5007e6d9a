import { cautions } from '../../../engine/index.js';
import type { Block, PlanCell } from '../demo/sheetPlan.js';
import type { SheetPlan } from '../templatePlan.js';

interface CautionRows {
  readonly texts: readonly string[];
  readonly blocks: readonly Block[];
  readonly looks: SheetPlan['looks'];
}

/** The engine's cautions below a heading, one a row from a row on; as text, to be read without the add-in. */
export function cautionRows(at: number, lastColumn: string): CautionRows {
  return {
    texts: cautions,
    blocks: [
      { at: `A${at - 1}`, cells: [['Cautions: copper is a poison, and fish die inside the band too']] },
      { at: `A${at}`, cells: cautions.map((text, i): PlanCell[] => [i + 1, text]) },
    ],
    looks: [
      { range: `A${at - 1}:${lastColumn}${at - 1}`, look: 'section' },
      { range: `A${at}:A${at + cautions.length - 1}`, look: 'cautionNumber' },
      { range: `B${at}:${lastColumn}${at + cautions.length - 1}`, look: 'caution' },
    ],
  };
}
