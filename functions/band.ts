import { formBand, formIn, ok } from '../src/engine/index.js';
import { pairAnswer, refusal } from './answer.js';
import { cellOf } from './cellOf.js';

/**
 * Low and high limit of the therapeutic band of a copper form, side by side. Fish die inside the band too; a veterinarian decides.
 * @customfunction BAND
 * @param form "sulfate", "amine" or "chelated".
 * @returns Low and high limit. [mg/L]
 */
export function bandCell(form: any): number[][] {
  const asked = formIn(cellOf(form))('form');
  if (!asked.ok) return refusal(asked);
  const { low, high } = formBand(asked.value);
  return pairAnswer(ok([low, high]));
}
