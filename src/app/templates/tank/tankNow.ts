import { form, line, type SheetPlan, sheetPlan } from '../plan/index.js';
import { asOf, rowsBelowTable } from '../sheets/asOf.js';
import { doNow } from '../sheets/doNow.js';

/** Times and readings with their heading, so that a row named in an answer is the row of the sheet Log. */
const readings = 'Log[[#All],[Date and time]],Log[[#All],[Copper mg/L]]';
const hold = `${readings},{$Card!Form$}`;
const terms = '{$Card!Longest gap h$},{$Card!Confirm$}';
/** The arguments of the hold up to a moment, and to the days of the card. */
export const holdToMoment = `${hold},AsOf,,${terms}`;
export const holdToDays = `${hold},{$Card!Days$},,${terms}`;

const columns = 6;
const noHold = '"no hold is running"';
const chance = `QT.HOLDCHANCE(${hold},{$Card!Meter accuracy mg/L$},{$Card!Meter percent$})`;

const whereItStands = form({
  at: 'A8',
  title: 'The hold',
  columns,
  valueColumns: 2,
  besideColumns: 3,
  looks: { answer: 'answer', beside: 'remark' },
  height: 18,
  lines: {
    band: ['Band of this copper', '=QT.BAND({$Card!Form$})', 'low and high limit, mg/L', { format: '0.00', fills: 2 }],
    held: [
      'Unbroken days held',
      `=IFNA(QT.HOLDDAYS(${holdToMoment}),"not tested yet")`,
      'at most 36 hours are counted past the last test',
      '0.00',
    ],
    began: [
      'Hold began',
      `=IFNA(QT.HOLDSTART(${holdToMoment}),${noHold})`,
      'the first reading in the band of the running hold',
      'yyyy-mm-dd hh:mm',
    ],
    are: [
      'Days complete on',
      `=IFNA(QT.HOLDENDS(${holdToDays}),${noHold})`,
      'if every test until then, and one on that day, is in the band',
      'yyyy-mm-dd hh:mm',
    ],
    that: [
      'Chance that it never dipped',
      `=IF({$Card!Meter accuracy mg/L$}="","no accuracy on the card",IFNA(${chance},${noHold}))`,
      'given the accuracy of the meter; it covers random errors only, and is no promise',
      '[>=0.995]"over 99%";0%',
    ],
    may: [
      'May the fish go?',
      '=LET(gates,QT.READY(Log[#All],Card,AsOf),INDEX(gates,ROWS(gates),1))',
      'the last row of the sheet Ready, which gives a reason for every gate',
    ],
  },
});

const days = '"Held "&ROUND({held},1)&" of "&{$Card!Days$}&" days without a break"';
const next =
  '{DONOW.Do first}&IF(ISNUMBER({DONOW.Amount first})," "&ROUND({DONOW.Amount first},1)&" "&{DONOW.Unit first},"")';
const headline = `=IF(ISNUMBER({held}),IF({held}>0,${days},"No hold is running"),"No reading yet")&". Next: "&${next}`;

/** Where the treatment stands at this moment, and what is due. */
export const tankNow: SheetPlan = sheetPlan({
  name: 'Now',
  tab: 'answer',
  page: { orientation: 'landscape' },
  parts: [
    line('A1', 'Now', 'title', { columns, height: 28 }),
    line('A2', headline, 'state', { columns, isMerged: true, height: 36 }),
    line('A4', 'The moment', 'section', { columns }),
    line('C5', '', 'remark', { columns: 4 }),
    line('D5', asOf.note, 'remark'),
    form({
      at: 'A5',
      looks: { answer: 'answer' },
      height: 18,
      lines: { asOf: ['As of', asOf.formula, '', 'yyyy-mm-dd hh:mm'] },
    }),
    line('A6', 'Rows', 'label', { height: 18 }),
    line('B6', '', 'remark', { columns: 5 }),
    line('B6', rowsBelowTable, 'remark', { key: 'rows', rules: [{ when: 'LEFT({$rows$},3)<>"all"', tone: 'guard' }] }),
    whereItStands,
    ...doNow('Log[#All],Card,AsOf', 16),
  ],
});
