import type { SheetPlan } from '../sheetPlan.js';
import { pastCardRange } from './pastCard.js';
import { pastLogRange } from './pastLog.js';

const days = 4;
const daysLast = days + 8;
const deaths = daysLast + 3;
const deathsLast = deaths + 2;

/** Each fish of the past treatment with its own days, and the deaths beside the published yardstick. */
export const pastFish: SheetPlan = {
  name: 'Past fish',
  widths: [440, 136, 130, 136, 90, 110, 90, 140],
  rows: 60,
  frozenRows: 1,
  blocks: [
    { at: 'A1', cells: [['The fish of the past treatment: each has its own days, and every death is counted']] },
    { at: `A${days - 1}`, cells: [['Hold days of each fish, on the morning after day 30 by the keeper’s count']] },
    { at: `A${days}`, cells: [[`=QT.FISHDAYS(${pastLogRange},${pastCardRange},'Past steps'!D3)`]] },
    { at: `A${deaths - 1}`, cells: [['Deaths, to the end of the log']] },
    { at: `A${deaths}`, cells: [[`=QT.DEATHS(${pastLogRange},${pastCardRange})`]] },
  ],
  looks: [
    { range: 'A1:H1', look: 'title' },
    { range: `A${days - 1}:H${days - 1}`, look: 'section' },
    { range: `A${days}:B${days}`, look: 'heading' },
    { range: `C${days}`, look: 'numberHeading' },
    { range: `D${days}:H${days}`, look: 'heading' },
    { range: `A${days + 1}:H${daysLast}`, look: 'spill' },
    { range: `A${deaths - 1}:H${deaths - 1}`, look: 'section' },
    { range: `A${deaths}`, look: 'heading' },
    { range: `B${deaths}:H${deaths}`, look: 'numberHeading' },
    { range: `A${deaths + 1}:H${deathsLast}`, look: 'wrapped' },
  ],
  formats: [
    { range: `B${days + 1}:B${daysLast}`, format: 'yyyy-mm-dd hh:mm' },
    { range: `C${days + 1}:C${daysLast}`, format: '0.00' },
    { range: `D${days + 1}:D${daysLast}`, format: 'yyyy-mm-dd hh:mm' },
    { range: `B${deaths + 1}:G${deathsLast}`, format: '0' },
    { range: `H${deaths + 1}:H${deathsLast}`, format: '0.0' },
  ],
  merged: [],
};
