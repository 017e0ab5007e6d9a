import { cautions } from '../../../engine/index.js';
import { line } from '../plan/line.js';
import { rows } from '../plan/rows.js';
import type { Look } from '../plan/look.js';
import type { Part } from '../plan/templatePlan.js';

/**
 * The engine's cautions below a heading, one a row; as text, to be read without the add-in.
 *
 * @param at the row of the heading, counted from 0
 * @param columns how many columns a caution takes, beside its number
 */
export function cautionRows(at: number, columns: number, heightOf: (text: string) => number): Part[] {
  const heading = 'Cautions: copper is a poison, and fish die inside the band too';
  return [
    line({ row: at, column: 0 }, heading, 'section', { columns: columns + 1 }),
    rows({
      at: { row: at + 1, column: 0 },
      cells: cautions.map((text, i) => [i + 1, text]),
      looks: ['cautionNumber', ...Array.from({ length: columns }, (): Look => 'caution')],
      ...(columns > 1 ? { mergedFrom: 1 } : {}),
      heights: cautions.map(heightOf),
    }),
  ];
}
