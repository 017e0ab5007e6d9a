import { isoFromSerial } from '../../engine/index.js';
import type { BundledFunction } from '../calls/bundledFunction.js';
import { outsideFunctions } from '../calls/outsideFunctions.js';
import { evaluatedBook, patchXlsx, readBook, zipWith } from '../../sheet/index.js';
import { answerWrites } from './answerWrites.js';
import { chartParts } from './chartParts.js';
import { demoPlan } from './demo/demoPlan.js';
import { fittedPlan } from './fittedPlan.js';
import { loadExcelize } from './loadExcelize.js';
import { packed } from './packed.js';
import { propertiesPart, propertiesXml } from './propertiesXml.js';
import { shopPlan } from './shop/shopPlan.js';
import { tankPlan } from './tank/tankPlan.js';
import type { TemplatePlan } from './templatePlan.js';
import { withArrays } from './withArrays.js';
import { withoutPictureTypes } from './withoutPictureTypes.js';
import { writtenPlan } from './writtenPlan.js';

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

/** A new workbook: written from its plan, its formulas worked out, and stored with their answers as dynamic arrays. */
export async function templateBytes(kind: TemplateKind, { bundle, now, compiled }: TemplateParts): Promise<Uint8Array> {
  const plan = templatePlans[kind];
  const excelize = await loadExcelize(compiled);
  const written = writtenPlan(plan, excelize);
  const name = `${kind}.xlsx`;
  const book = withArrays(readBook(written, name), plan);
  const answers = await evaluatedBook(book, outsideFunctions(bundle), { now, all: true });
  const fitted = plan.isFitted === true ? writtenPlan(fittedPlan(plan, answers), excelize) : written;
  const patched = patchXlsx(fitted, answerWrites(answers, plan));
  const made = `${isoFromSerial(now).replace(' ', 'T')}:00Z`;
  const properties = new TextEncoder().encode(propertiesXml(plan, made));
  const parts = chartParts(plan, readBook(patched, name)).set(propertiesPart, properties);
  return packed(withoutPictureTypes(zipWith(patched, parts)), made);
}
