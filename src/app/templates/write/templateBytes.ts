import { isoFromSerial } from '../../../engine/index.js';
import {
  type Book,
  type CellAnswer,
  cellRange,
  type CellValue,
  type CellWrite,
  evaluatedBook,
  formulaAsStored,
  patchXlsx,
} from '../../../sheet/index.js';
import type { BundledFunction } from '../../calls/bundledFunction.js';
import { outsideFunctions, qtNames } from '../../calls/outsideFunctions.js';
import { demoPlan } from '../demo/demoPlan.js';
import { answeredBook, planBook } from '../plan/planBook.js';
import type { TemplatePlan } from '../plan/templatePlan.js';
import { shopPlan } from '../shop/shopPlan.js';
import { tankPlan } from '../tank/tankPlan.js';
import { chartXml } from './chartXml.js';
import { fittedPlan } from './fittedPlan.js';
import { loadExcelize } from './loadExcelize.js';
import { packedParts } from './packedParts.js';
import { writtenBook } from './writtenBook.js';

export type TemplateKind = 'tank' | 'shop' | 'demo';

interface TemplateParts {
  readonly bundle: readonly BundledFunction[];
  /** The moment at which it is made: the file's date, and what NOW() gives in its stored answers. [serial day] */
  readonly now: number;
  /** Path of the writer's compiled file; if left out it is looked for, see `loadExcelize`. */
  readonly compiled?: string;
}

/** The plan of each template. */
export const templatePlans: Readonly<Record<TemplateKind, TemplatePlan>> = {
  tank: tankPlan,
  shop: shopPlan,
  demo: demoPlan,
};

/** A new workbook: a Book made from its plan, worked out, and written once with its answers as dynamic arrays. */
export async function templateBytes(kind: TemplateKind, { bundle, now, compiled }: TemplateParts): Promise<Uint8Array> {
  const plan = templatePlans[kind];
  const book = planBook(plan);
  const answers = await evaluatedBook(book, outsideFunctions(bundle), { now, all: true });
  const answered = answeredBook(book, answers, plan);
  const fitted = plan.isFitted === true ? fittedPlan(plan, answered) : plan;
  // The writer cannot write arrays that grow, so our own patcher puts in formulas and answers.
  const filled = patchXlsx(writtenBook(fitted, await loadExcelize(compiled)), answers.map(writeOf));
  const charts = plan.sheets.flatMap((sheet) => sheet.charts);
  // The writer numbers the drawings as the sheets have them.
  const drawn = charts.map((chart, i): [string, string] => [
    `xl/charts/chart${i + 1}.xml`,
    chartXml(chart, (reference) => cellsOf(reference, answered)),
  ]);
  const made = `${isoFromSerial(now).replace(' ', 'T')}:00Z`;
  return packedParts(filled, new Map(drawn), { plan, made });
}

function writeOf({ sheet, row, column, value, formula, fills }: CellAnswer): CellWrite {
  const place = { sheet, row, column, value };
  if (formula === '') return place;
  const stored = { ...place, formula: formulaAsStored(formula, qtNames) };
  return fills === undefined ? stored : { ...stored, fills, dynamic: true };
}

/** The cells of one column, such as `'One system'!$B$5:$B$9`. */
function cellsOf(reference: string, { sheets }: Book): CellValue[] {
  const [, name = '', address = ''] = /^'?([^'!]+)'?!(.+)$/.exec(reference) ?? [];
  const sheet = sheets.find((one) => one.name === name);
  if (sheet === undefined) throw new Error(`no sheet for ${reference}`);
  const { firstRow, lastRow, firstColumn } = cellRange(address);
  return Array.from(
    { length: lastRow - firstRow + 1 },
    (_, i) => sheet.rows[firstRow + i]?.[firstColumn]?.value ?? null,
  );
}
