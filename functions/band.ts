import { formBand, formIn, ok } from '../src/engine/index.js';
import { pairAnswer } from './answer.js';
import { cellOf } from './cellOf.js';

/**
 * Low and high limit of the therapeutic band of a copper form, side by side. Fish die inside the band too; a veterinarian decides.
 * @customfunction BAND
 * @param form "sulfate", "amine" or "chelated".
 * @returns Low and high limit. [mg/L]
 */
export function bandCell(form: any): number[][] {
  const band = formIn(cellOf(form))('form');
  return pairAnswer(band.ok ? ok([formBand(band.value).low, formBand(band.value).high]) : band);
}
