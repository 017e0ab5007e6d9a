import type { SheetPlan as DemoSheet } from './sheetPlan.js';
import { addressOf, cellRange } from '../../../sheet/index.js';
import type { Condition, SheetPlan } from '../templatePlan.js';
import { demoLooks } from './demoLooks.js';

/** Pixels of a character and of the margins of a column: a little less than files count, so that there is room. */
const [digit, margins] = [7, 5];

/** A sheet of the demo as a file has it: widths in characters, looks by column, print setup; all are wide. */
export function demoSheet(sheet: DemoSheet): SheetPlan {
  const { name, widths, frozenRows, blocks, looks, formats, merged } = sheet;
  const isLog = looks.some(({ look }) => look === 'log');
  return {
    name,
    tab: isLog ? 'write' : 'answer',
    widths: widths.map((pixels) => (pixels - margins) / digit),
    frozen: { rows: frozenRows },
    blocks,
    looks: demoLooks(sheet),
    formats,
    merged,
    conditions: looks.filter(({ look }) => look === 'wrapped' || look === 'log').map(({ range }) => ruledRows(range)),
    refused: looks.filter(({ look }) => look === 'refusal').map(({ range }) => range),
    page: { orientation: 'landscape', repeated: `1:${frozenRows}` },
  };
}

/** A line below each row of a table, as far as it is filled. */
function ruledRows(range: string): Condition {
  const { firstRow, firstColumn, lastColumn } = cellRange(range);
  const [from, to] = [addressOf(firstRow, firstColumn), addressOf(firstRow, lastColumn)].map((cell) => `$${cell}`);
  return { range, rules: [{ when: `COUNTA(${from}:${to})>0`, tone: 'row' }] };
}
