import {
  addressOf,
  type Book,
  type BookCell,
  type BookSheet,
  type BookTable,
  callsOutside,
  type CellAnswer,
  formulaAsStored,
  isInside,
  oneCell,
} from '../../../sheet/index.js';
import { qtNames } from '../../calls/outsideFunctions.js';
import type { PlannedCell, SheetPlan, TemplatePlan } from './templatePlan.js';

/** A plan as a Book whose formulas have no answers yet. */
export function planBook(plan: TemplatePlan): Book {
  return {
    kind: 'xlsx',
    sheets: plan.sheets.map(bookSheet),
    names: plan.names.map(({ name, cells }) => ({ name, formula: cells })),
    tables: plan.sheets.flatMap(tablesOf),
    date1904: false,
    remarks: [],
  };
}

/** The Book with the answers of its formulas. Only a formula that the plan marks as refused may have none. */
export function answeredBook(book: Book, answers: readonly CellAnswer[], plan: TemplatePlan): Book {
  for (const { sheet, row, column, formula, reason, isKept } of answers) {
    const cell = plan.sheets
      .find(({ name }) => name === sheet)
      ?.cells.find((one) => one.row === row && one.column === column);
    const isFault = formula !== '' && reason !== undefined && cell?.isRefused !== true;
    if (isKept === true || isFault)
      throw new Error(`${sheet}!${addressOf(row, column)} has no answer: ${reason ?? 'it was not worked out'}`);
  }
  return {
    ...book,
    sheets: book.sheets.map((sheet) => {
      const rows = sheet.rows.map((row) => [...(row ?? [])]);
      for (const { row, column, value, fills } of answers.filter((answer) => answer.sheet === sheet.name)) {
        const line = (rows[row] ??= []);
        line[column] = { ...line[column], value, ...(fills === undefined ? {} : { fills }) };
      }
      return { ...sheet, rows: Array.from(rows, (row: BookSheet['rows'][number]) => row ?? []) };
    }),
  };
}

function bookSheet({ name, cells, areas, merged }: SheetPlan): BookSheet {
  const rows: (BookCell | undefined)[][] = [];
  for (const cell of cells) {
    const row = (rows[cell.row] ??= []);
    const format = areas
      .filter(({ range, format: given }) => given !== undefined && isInside(range, cell.row, cell.column))
      .at(-1)?.format;
    row[cell.column] = { ...bookCell(cell), ...(format === undefined ? {} : { format }) };
  }
  return {
    name,
    hidden: false,
    rows: Array.from(rows, (row: (BookCell | undefined)[] | undefined) => Array.from(row ?? [])),
    merged,
    widths: [],
  };
}

/** QT formulas, and others that the plan marks as arrays, may fill as many cells as they need. */
function bookCell({ row, column, content, isArray = false }: PlannedCell): BookCell {
  if (typeof content === 'number' || !content.startsWith('=')) return { value: content };
  const formula = formulaAsStored(content.slice(1), qtNames);
  if (!isArray && !callsOutside(formula, qtNames)) return { value: null, formula };
  return { value: null, formula, dynamic: true, fills: oneCell({ row, column }) };
}

function tablesOf({ name: sheet, table, cells }: SheetPlan): BookTable[] {
  if (table === undefined) return [];
  const { name, range } = table;
  const headings = cells.filter(({ row, column }) => row === range.firstRow && isInside(range, row, column));
  return [
    { name, sheet, range, columns: headings.map(({ content }) => String(content)), headings: true, totals: false },
  ];
}
