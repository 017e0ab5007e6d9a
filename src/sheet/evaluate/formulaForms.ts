import { aggregateForms } from './aggregateForms.js';
import { conditionalForms } from './conditionalForms.js';
import { lambdaForms } from './lambdaForms.js';
import { referenceForms } from './referenceForms.js';
import type { Form } from './value.js';

/** Functions that are worked out here, arguments and all; the other usual ones come from a library. */
export const formulaForms: ReadonlyMap<string, Form> = new Map([
  ...aggregateForms,
  ...conditionalForms,
  ...lambdaForms,
  ...referenceForms,
]);
