import { formOf } from '../dose/formOf.js';
import { copperForms, type FormName } from '../dose/forms.js';
import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import { isBlank, type Cell } from '../units/cell.js';
import { decimalText } from '../units/decimalText.js';
import { levelTolerance } from '../units/quantity.js';
import { levelSettingIn } from '../units/readers/quantityReaders.js';
import type { Reader } from '../units/readers/reader.js';
import { shown } from '../units/shown.js';
import type { JudgedBand } from './holdRows.js';

/** A band by its copper form, by its low limit alone, or by two cells, low and high; a blank high means no top. */
export function bandIn(cells: readonly (readonly Cell[])[]): Reader<JudgedBand> {
  return (field) => {
    const [first = null, second = null, ...more] = cells.flat();
    if (more.length > 0) return refuse({ code: 'band-cells', rows: cells.length, columns: cells[0]?.length ?? 0 });
    if (isBlank(first)) return refuse({ code: 'blank', at: { field }, kind: 'band' });
    if (isBlank(second) && typeof first === 'string' && decimalText(first) === null) return bandOfForm(first, field);
    return bandOfLimits(first, second, field);
  };
}

function bandOfForm(text: string, field: string): Result<JudgedBand, Problem> {
  const form = formOf(text, field);
  return form.ok ? ok(formBand(form.value)) : form;
}

/**
 * A form's band with its allowance, and the limits without it.
 *
 * Definition: as copperForms lists them, with their sources.
 */
export function formBand(name: FormName): JudgedBand {
  const { band, inner } = copperForms[name];
  return { ...band, inner };
}

function bandOfLimits(first: Cell, second: Cell, field: string): Result<JudgedBand, Problem> {
  const low = levelSettingIn(first)(`${field} low`);
  if (!low.ok) return low;
  if (low.value <= 0) {
    return refuse({
      code: 'out-of-limits',
      at: { field: `${field} low` },
      given: shown(first),
      limits: { above: 0 },
      unit: 'mg/L',
    });
  }
  if (isBlank(second)) return ok({ low: low.value, high: Infinity });
  const high = levelSettingIn(second)(`${field} high`);
  if (!high.ok) return high;
  if (high.value >= low.value - levelTolerance) return ok({ low: low.value, high: high.value });
  return refuse({ code: 'band-upside-down', low: shown(first), high: shown(second) });
}
