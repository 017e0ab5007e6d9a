import { addressOf, type CellAnswer, type CellWrite, formulaAsStored } from '../../sheet/index.js';
import { qtNames } from '../calls/outsideFunctions.js';
import type { TemplatePlan } from './templatePlan.js';

/** The answers of a new workbook as they go into its file: arrays with the cells they fill, the others where they stand. */
export function answerWrites(answers: readonly CellAnswer[], { sheets }: TemplatePlan): CellWrite[] {
  const refused = new Set(sheets.flatMap(({ name, refused: cells = [] }) => cells.map((cell) => `${name}!${cell}`)));
  return answers.map((answer) => {
    const { sheet, row, column, value, formula, fills } = answer;
    const isFault = formula !== '' && answer.reason !== undefined && !refused.has(`${sheet}!${addressOf(row, column)}`);
    if (answer.isKept === true || isFault) {
      throw new Error(`${sheet}!${addressOf(row, column)} has no answer: ${answer.reason ?? 'it was not worked out'}`);
    }
    const place = { sheet, row, column, value };
    return fills === undefined ? place : { ...place, formula: formulaAsStored(formula, qtNames), fills, dynamic: true };
  });
}
