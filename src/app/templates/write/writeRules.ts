import type { DataValidation, NewFile } from 'excelize-wasm';
import { addressRange, xmlText } from '../../../sheet/index.js';
import type { SheetPlan, Validation } from '../plan/templatePlan.js';
import type { BookStyles } from './bookStyles.js';
import { done } from './loadExcelize.js';

/** What the cells of a sheet take, and the looks they take on. */
export function writeRules(file: NewFile, plan: SheetPlan, styles: BookStyles): void {
  for (const validation of plan.validations) {
    done(file.AddDataValidation(plan.name, dataValidation(validation)), `${plan.name}: ${validation.title}`);
  }
  for (const { range, rules } of plan.conditions) {
    const options = rules.map(({ when, tone }) => ({
      Type: 'formula',
      Criteria: when,
      Format: styles.tone(tone),
      StopIfTrue: false,
    }));
    done(file.SetConditionalFormat(plan.name, shortRange(range), options), `${plan.name}!${shortRange(range)}`);
  }
}

function dataValidation({ range, allows, title, prompt, refusal }: Validation): DataValidation {
  return {
    Sqref: shortRange(range),
    AllowBlank: true,
    ShowInputMessage: true,
    PromptTitle: title,
    Prompt: prompt,
    ...(allows.kind === 'anything'
      ? {}
      : { ShowErrorMessage: true, ErrorStyle: 'stop', ErrorTitle: title, Error: refusal }),
    ...allowed(allows),
  };
}

function allowed(allows: Validation['allows']): Partial<DataValidation> {
  switch (allows.kind) {
    case 'list':
      return { Type: 'list', Formula1: `"${xmlText(allows.values.join(','))}"` };
    case 'listFrom':
      return { Type: 'list', Formula1: xmlText(allows.cells) };
    case 'decimal':
    case 'whole':
    case 'date':
      return { Type: allows.kind, Operator: 'between', Formula1: String(allows.from), Formula2: String(allows.to) };
    case 'formula':
      return { Type: 'custom', Formula1: xmlText(allows.formula) };
    case 'anything':
      return {};
  }
}

/** One cell by its own address. */
function shortRange(range: Validation['range']): string {
  const [first = '', last = ''] = addressRange(range).split(':');
  return first === last ? first : `${first}:${last}`;
}
