import type { PlanAction, PlanStep } from '../plan/planStep.js';
import { columnsOf, type Table } from '../result/table.js';
import { afterTexts } from './planTexts/afterTexts.js';
import { holdTexts } from './planTexts/holdTexts.js';
import { medicineTexts } from './planTexts/medicineTexts.js';
import type { ByCode, PlanText, PlanTexts } from './planTexts/planTexts.js';
import { preparationTexts } from './planTexts/preparationTexts.js';

export const planColumns = columnsOf({ When: 'time', Day: 'number', Do: 'text', Why: 'text' });

const texts: PlanTexts = { ...preparationTexts, ...medicineTexts, ...holdTexts, ...afterTexts } satisfies PlanTexts;

/** A plan as PLAN spills it. */
export function planTable(steps: readonly PlanStep[]): Table {
  return {
    columns: planColumns,
    rows: steps.map((step) => {
      const { doing, why } = textOf(step.code, step);
      return [step.when, step.holdDay ?? '', doing, why];
    }),
  };
}

function textOf<C extends PlanAction['code']>(code: C, step: ByCode[C]): PlanText {
  return texts[code](step);
}
