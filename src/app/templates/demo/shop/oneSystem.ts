import type { SheetPlan } from '../sheetPlan.js';
import { shopCards } from './shopNow.js';
import { shopLogRange, shopLogSystems } from './shopLog.js';

const cardNames = 7;
const firstCard = 4;
const lastCard = firstCard + cardNames - 2;
const audit = lastCard + 3;
const auditEnd = audit + 30;

/**
 * The shared log without the rows of other systems: they are made empty, so that a row named in the audit is the row of the
 * sheet Shop log. An empty cell stays empty and is not made 0.
 */
const itsRows =
  `IF((${shopLogSystems}=B3)+(${shopLogSystems}="System"),` + `IF(ISBLANK(${shopLogRange}),"",${shopLogRange}),"")`;

/** One system of the shop, chosen in a cell, audited. */
export const oneSystem: SheetPlan = {
  name: 'One system',
  widths: [116, 132, 46, 560, 376, 160],
  rows: auditEnd + 20,
  frozenRows: 1,
  blocks: [
    { at: 'A1', cells: [['One system of the shop, audited: write its name into the blue cell']] },
    { at: 'A3', cells: [['System', 'C3']] },
    { at: 'D3', cells: [['write A1 to C4; its card comes from the sheet Shop, its rows from the sheet Shop log']] },
    {
      at: `A${firstCard}`,
      cells: Array.from({ length: cardNames - 1 }, (_, at) => [
        `=INDEX(${shopCards.headings},1,${at + 2})`,
        `=INDEX(${shopCards.rows},MATCH(B3,${shopCards.systems},0),${at + 2})`,
      ]),
    },
    {
      at: `A${audit - 1}`,
      cells: [
        [
          'The audit of its rows: one formula, which makes the rows of the other systems empty; Row is the row of the sheet Shop log',
        ],
      ],
    },
    { at: `A${audit}`, cells: [[`=QT.AUDIT(${itsRows},A3:B${lastCard},Shop!B3)`]] },
  ],
  looks: [
    { range: 'A1:F1', look: 'title' },
    { range: `A3:A${lastCard}`, look: 'label' },
    { range: 'B3', look: 'input' },
    { range: 'D3', look: 'note' },
    { range: `B${firstCard}:B${lastCard}`, look: 'answer' },
    { range: `A${audit - 1}:F${audit - 1}`, look: 'section' },
    { range: `A${audit}:B${audit}`, look: 'heading' },
    { range: `C${audit}`, look: 'numberHeading' },
    { range: `D${audit}:F${audit}`, look: 'heading' },
    { range: `A${audit + 1}:F${auditEnd}`, look: 'wrapped' },
  ],
  formats: [
    { range: `B${audit + 1}:B${auditEnd}`, format: 'yyyy-mm-dd hh:mm' },
    { range: `C${audit + 1}:C${auditEnd}`, format: '0' },
  ],
  merged: [],
};
