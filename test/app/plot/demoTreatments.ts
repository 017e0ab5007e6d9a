import { pastCard } from '../../../src/app/templates/demo/past/pastCard.js';
import { pastColumns, pastRows } from '../../../src/app/templates/demo/past/pastRows.js';
import { shopLog } from '../../../src/app/templates/demo/shop/shopLog.js';
import { shopMoment } from '../../../src/app/templates/demo/shop/shopRows.js';
import { shopSystems } from '../../../src/app/templates/demo/shop/shopSystems.js';
import type { Content, SheetPlan } from '../../../src/app/templates/plan/templatePlan.js';
import {
  auditFindings,
  cardOf,
  logOfOneSystem,
  treatmentOf,
  type Card,
  type CardEntry,
  type Finding,
  type Treatment,
} from '../../../src/engine/index.js';
import { cellOf } from '../../../functions/cellOf.js';

export interface DemoTreatment {
  readonly treatment: Treatment;
  readonly card: Card;
  readonly cardEntries: readonly CardEntry[];
  readonly findings: readonly Finding[];
  readonly rows: number;
  readonly columns: number;
}

type Rows = readonly (readonly Content[])[];

/** A treatment from rows of a sheet and a card, as a workbook would give them; its headings stand in `firstRow`. */
export function treatmentOfRows(log: Rows, card: Rows, asOf?: number, firstRow = 1): DemoTreatment {
  const read = cardOf({ range: card.map((row) => [...row]), cellOf });
  if (!read.ok) throw new Error(JSON.stringify(read.problem));
  const range = log.map((row) => [...row]);
  const rows = logOfOneSystem({ range, firstRow, cellOf }, read.value.card, ['time', 'copper']);
  if (!rows.ok) throw new Error(JSON.stringify(rows.problem));
  const treatment = treatmentOf(rows.value, read.value.card, asOf);
  const { card: made, entries } = read.value;
  const findings = auditFindings(treatment);
  return { treatment, card: made, cardEntries: entries, findings, rows: log.length, columns: log[0]?.length ?? 0 };
}

/** The past treatment of the demo workbook. */
export function pastTreatment(asOf?: number, firstRow = 1): DemoTreatment {
  const log = [pastColumns.map(({ heading }) => heading), ...pastRows];
  const card = rowsOfPlan(pastCard).slice(3, 14);
  return treatmentOfRows(
    log,
    card.map((row) => row.slice(0, 2)),
    asOf,
    firstRow,
  );
}

/** One system of the demo shop on its Monday morning; rows of other systems are blank, so that rows keep their number. */
export function shopTreatment(name: string): DemoTreatment {
  const system = shopSystems.find((each) => each.name === name);
  if (system === undefined) throw new Error(`no system ${name}`);
  const [headings = [], ...rows] = rowsOfPlan(shopLog);
  const own = rows.map((row) => (row[0] === name ? row : row.map(() => null)));
  const card: Content[][] = [
    ['System', name],
    ['Volume', system.volume],
    ['Form', system.form],
    ['Strength', system.strength],
    ['Meter accuracy', system.meter],
    ['Fish', system.fish],
  ];
  return treatmentOfRows([headings, ...own], card, shopMoment);
}

/** All cells of a planned sheet, row by row. */
function rowsOfPlan({ cells, widths }: SheetPlan): Rows {
  const rows: Content[][] = [];
  for (const { row, column, content } of cells) (rows[row] ??= widths.map((): Content => null))[column] = content;
  return rows;
}
