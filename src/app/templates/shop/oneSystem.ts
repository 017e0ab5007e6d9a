import type { PlanCell } from '../demo/sheetPlan.js';
import { doNowRows } from '../sheets/doNowRows.js';
import type { SheetPlan } from '../templatePlan.js';
import { cardColumns, systemNames } from './shopCards.js';
import { standings } from './shopOverview.js';

const card = { first: 5, last: 5 + cardColumns.length - 1 };
const stand = { first: card.last + 3 };
const tasks = doNowRows('', stand.first + 10);

/**
 * The shared log with the rows of other systems made empty, so that a row named in an answer is the row of the sheet Log.
 * An empty cell stays empty and is not made 0.
 */
export const itsRows =
  'IF((TRIM(Log[[#All],[System]])=Chosen)+(Log[[#All],[System]]="System"),IF(ISBLANK(Log[#All]),"",Log[#All]),"")';

export const chosenCell = `'One system'!$B$${card.first}`;
export const itsCardCells = `'One system'!$A$${card.first}:$B$${card.last}`;
const bandRow = stand.first + 6;
export const itsBandCells = { low: `'One system'!$B$${bandRow}`, high: `'One system'!$C$${bandRow}` };
const formCell = `$B$${card.first + cardColumns.findIndex(({ name }) => name === 'Form')}`;

/** Of an empty cell of the cards nothing is made, not a 0. */
const cardValue = (name: string): string => {
  const cell = `INDEX(Cards[${name}],MATCH(Chosen,Cards[System],0))`;
  return `=IF(${cell}="","",${cell})`;
};

const standingColumns = ['Last test', 'Copper', 'Status', 'Hold day', 'Days left', 'Do now'];

/** One system of the log, chosen from a list: its card, how it stands, what it needs. */
export const oneSystem: SheetPlan = {
  name: 'One system',
  tab: 'answer',
  widths: [34, 20, 14, 18, 72, 11],
  heights: [
    { rows: [1, 1], height: 28 },
    { rows: [card.first, card.last], height: 17 },
    { rows: [stand.first, bandRow], height: 17 },
    ...tasks.heights,
  ],
  blocks: [
    { at: 'A1', cells: [['One system: choose it in the blue cell']] },
    { at: 'A2', cells: [['The sheets Audit, Ready, Fish, Deaths and Chart follow the system that is chosen here.']] },
    { at: `A${card.first - 1}`, cells: [['Its card, from the sheet Systems']] },
    {
      at: `A${card.first}`,
      cells: [['System', 'Q4'], ...cardColumns.slice(1).map(({ name }): PlanCell[] => [name, cardValue(name)])],
    },
    {
      at: `C${card.first}`,
      cells: [[`=IF(COUNTIF(${systemNames},Chosen)=0,"no card on the sheet Systems has this name","")`]],
    },
    { at: `A${stand.first - 1}`, cells: [['How it stands, from the sheet Overview']] },
    {
      at: `A${stand.first}`,
      cells: [
        ...standingColumns.map((name, i): PlanCell[] => [
          name,
          `=IFERROR(INDEX(${standings.all},MATCH(Chosen,${standings.systems},0),${i + 2}),"")`,
        ]),
        ['Band of its copper', `=QT.BAND(${formCell})`, null, 'low and high limit, mg/L'],
      ],
    },
    ...tasks.blocks.map((block) =>
      block.cells[0]?.[0] === '' ? { ...block, cells: [[`=QT.DONOW(${itsRows},ItsCard,AsOf)`]] } : block,
    ),
  ],
  looks: [
    { range: 'A1:F1', look: 'title' },
    { range: 'A2:F2', look: 'note' },
    { range: `A${card.first - 1}:F${card.first - 1}`, look: 'section' },
    { range: `A${card.first}:A${card.last}`, look: 'label' },
    { range: `B${card.first}`, look: 'input' },
    { range: `C${card.first}:F${card.last}`, look: 'remark' },
    { range: `B${card.first + 1}:B${card.last}`, look: 'answer' },
    { range: `A${stand.first - 1}:F${stand.first - 1}`, look: 'section' },
    { range: `A${stand.first}:A${bandRow}`, look: 'label' },
    { range: `B${stand.first}:B${bandRow}`, look: 'answer' },
    { range: `C${stand.first}:F${bandRow}`, look: 'remark' },
    { range: `C${bandRow}`, look: 'answer' },
    ...tasks.looks,
  ],
  formats: [
    ...cardColumns.flatMap(({ format }, i) => (format === '' ? [] : [{ range: `B${card.first + i}`, format }])),
    { range: `B${stand.first}`, format: 'yyyy-mm-dd hh:mm' },
    { range: `B${stand.first + 1}`, format: '0.00' },
    { range: `B${stand.first + 3}`, format: '0' },
    { range: `B${stand.first + 4}`, format: '0.0' },
    { range: `B${bandRow}:C${bandRow}`, format: '0.00' },
    ...tasks.formats,
  ],
  merged: ['A2:F2'],
  validations: [
    {
      range: `B${card.first}`,
      allows: { kind: 'listFrom', cells: systemNames },
      title: 'System',
      prompt: 'Choose a system of the sheet Systems.',
      refusal: 'Choose a name of the list; systems are added on the sheet Systems.',
    },
  ],
  conditions: [
    { range: `C${card.first}`, rules: [{ when: `$C$${card.first}<>""`, tone: 'guard' }] },
    {
      range: `B${stand.first + 2}`,
      rules: [
        { when: `$B$${stand.first + 2}="below"`, tone: 'low' },
        { when: `$B$${stand.first + 2}="in band"`, tone: 'inside' },
        { when: `$B$${stand.first + 2}="above"`, tone: 'high' },
      ],
    },
    ...tasks.conditions,
  ],
  page: { orientation: 'landscape' },
};
