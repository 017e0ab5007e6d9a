import { formOf } from '../../dose/formOf.js';
import { copperForms, type FormName } from '../../dose/forms.js';
import type { Problem } from '../../result/problem.js';
import { ok, refuse, type Result } from '../../result/result.js';
import type { Cell } from '../../units/cell.js';
import { decimalText } from '../../units/decimalText.js';
import { levelTolerance } from '../../units/quantity.js';
import { levelSettingIn } from '../../units/readers/quantityReaders.js';
import { shown } from '../../units/shown.js';
import type { CardBand } from '../card.js';

interface FormAndBand {
  readonly form: FormName | null;
  readonly band: CardBand;
}

/** The band on a card: a form, a low limit, or both limits in one cell, like "1.95-2.55". */
export function cardBand(cell: Cell, field: string): Result<FormAndBand, Problem> {
  if (typeof cell === 'string' && decimalText(cell) === null) {
    const form = formOf(cell, field);
    if (!form.ok) return form;
    const { band, inner } = copperForms[form.value];
    return ok({ form: form.value, band: { ...band, inner } });
  }
  const ends = typeof cell === 'string' ? /^(.*\d[^-–\d]*?)\s*(?:[-–]|\bto\b)\s*(\d.*)$/i.exec(cell.trim()) : null;
  const low = levelSettingIn(ends?.[1] ?? cell)(field);
  if (!low.ok) return low;
  if (low.value <= 0)
    return refuse({ code: 'out-of-limits', at: { field }, given: shown(cell), limits: { above: 0 }, unit: 'mg/L' });
  const high = ends === null ? ok(Infinity) : levelSettingIn(ends[2] ?? '')(field);
  if (!high.ok) return high;
  if (high.value < low.value - levelTolerance)
    return refuse({ code: 'band-upside-down', low: shown(low.value), high: shown(high.value) });
  return ok({ form: null, band: { low: low.value, high: high.value } });
}
