import type { CsvColumn, UnclearNumber, WrittenCell } from './csvCells.js';
import type { FoundOrder } from './dateOrders.js';
import type { DecimalMarks } from './decimalMarks.js';
import { delimiterName } from './delimiterIn.js';
import { numberBy, type DecimalMark } from './numberText.js';

interface FoundInCsv {
  readonly encoding: string;
  readonly delimiter: string;
  readonly decimals: DecimalMarks;
  readonly orders: readonly (FoundOrder | null)[];
  readonly columns: readonly CsvColumn[];
  readonly overLines: number;
  readonly hasSeparatorLine: boolean;
}

/** One sentence on how a csv file was read, and one on how its rows are counted where that is not obvious. */
export function csvRemarks(found: FoundInCsv): string[] {
  const parts = [...decimalWords(found), ...orderWords(found.orders)];
  const marked = `fields separated by ${delimiterName(found.delimiter)}`;
  const rows = rowWords(found);
  return [`Read as ${found.encoding}: ${[marked, ...parts].join(', ')}.`, ...(rows === '' ? [] : [rows])];
}

function decimalWords({ decimals: { shown, marks }, columns }: FoundInCsv): string[] {
  const words: string[] = [];
  const both = (['.', ','] as const).flatMap((mark) => {
    const of = columns.map(({ shows, tells }) => shows[mark] ?? tells[mark]);
    const cell = of.find((each) => each !== null);
    return cell ? [shownMark(mark, cell)] : [];
  });
  if (shown !== null) words.push(shownMark(shown.mark, shown));
  else if (both.length > 1) words.push(both.join(' and '));
  const columnOf = columns.findIndex(({ numbers }) => numbers.length > 0);
  const [unclear] = columns[columnOf]?.numbers ?? [];
  const mark = marks[columnOf] ?? null;
  return unclear === undefined || mark === null ? words : [...words, readAs(unclear, numberBy(unclear.text, mark))];
}

function shownMark(mark: DecimalMark, { text, row }: WrittenCell): string {
  return `decimal ${mark === ',' ? 'commas' : 'points'} ("${text.trim()}" in row ${row + 1})`;
}

function readAs({ text, row }: UnclearNumber, value: number): string {
  return `"${text.trim()}" in row ${row + 1} read as ${value}`;
}

const reasons: Readonly<Record<FoundOrder['why'], (cell: FoundOrder['cell']) => string>> = {
  asked: () => 'as you said',
  'a part over 12': ({ text, row }) => `"${text.trim()}" in row ${row + 1}`,
  'another column': () => 'as in another column',
  'order in time': () => 'only then are the rows in order of time',
  points: ({ text }) => `as is usual with points, "${text.trim()}"`,
  'all alike': () => 'which makes no difference',
};

/** Each order once, with the reason of the first column that has it. */
function orderWords(orders: readonly (FoundOrder | null)[]): string[] {
  const said = new Map<string, string>();
  for (const found of orders) {
    if (found !== null && !said.has(found.order)) said.set(found.order, reasons[found.why](found.cell));
  }
  return [...said].map(([order, reason]) => `dates ${order} (${reason})`);
}

function rowWords({ overLines, hasSeparatorLine }: FoundInCsv): string {
  if (overLines > 0) {
    const many = overLines === 1 ? 'one row runs' : `${overLines} rows run`;
    return `Rows are counted as records, and ${many} over several lines${hasSeparatorLine ? '; the line sep= is not counted' : ''}.`;
  }
  return hasSeparatorLine ? 'Rows are counted below the line sep=.' : '';
}
