import * as fc from 'fast-check';
import { copperDose } from '../../../src/engine/dose/copperDose.js';
import { copperRise } from '../../../src/engine/dose/copperRise.js';
import { copperForms, formNames, type FormName } from '../../../src/engine/dose/forms.js';
import { copperMgPerLitre, copperMgPerMl, litres } from '../../../src/engine/units/quantity.js';

const dose = (volume: number, level: number, wanted: number, strength: number, form?: FormName) =>
  copperDose({
    volume: litres(volume),
    level: copperMgPerLitre(level),
    wanted: copperMgPerLitre(wanted),
    strength: copperMgPerMl(strength),
    form,
  });

describe('copperDose', () => {
  it('is 45 mL of 10 mg/mL for 200 L from 0 to 2.25', () => {
    // 2.25 mg/L × 200 L ÷ 10 mg/mL = 45 mL
    expect(dose(200, 0, 2.25, 10)).toEqual({ ok: true, value: 45 });
    expect(dose(200, 0, 2.25, 10, 'chelated')).toEqual({ ok: true, value: 45 });
  });

  it('is 0 where the level is the wanted one', () => {
    expect(dose(200, 2.25, 2.25, 10)).toEqual({ ok: true, value: 0 });
    // 0.1 + 0.2 is a little more than 0.3 in binary
    expect(dose(200, 0.1 + 0.2, 0.3, 10)).toEqual({ ok: true, value: 0 });
    expect(dose(200, 0.3, 0.1 + 0.2, 10)).toEqual({ ok: true, value: 0 });
    expect(dose(200, 0, 0, 10)).toEqual({ ok: true, value: 0 });
  });

  it('refuses to lower', () => {
    const problem = { code: 'lowering-by-dose', wanted: 2, level: 2.5 };
    expect(dose(200, 2.5, 2, 10)).toEqual({ ok: false, problem });
    expect(dose(200, 2.5, 2, 10, 'sulfate')).toEqual({ ok: false, problem });
  });

  it.each<[number, FormName | undefined, string, number, number]>([
    [0.22, 'sulfate', 'sulfate', 0.18, 0.21],
    [0.56, 'amine', 'amine', 0.45, 0.55],
    [2.56, 'chelated', 'chelated', 1.95, 2.55],
    [2.56, undefined, 'chelated', 1.95, 2.55],
  ])('refuses %d with form %s', (wanted, form, band, low, high) => {
    expect(dose(200, 0, wanted, 10, form)).toEqual({
      ok: false,
      problem: { code: 'above-band', wanted, band, low, high },
    });
    expect(dose(200, wanted, wanted, 10, form).ok).toBe(false);
  });

  it.each(formNames)('reaches the top of the %s band', (form) => {
    expect(dose(200, 0, copperForms[form].band.high, 10, form).ok).toBe(true);
    expect(dose(200, 0, copperForms[form].band.high + 5e-10, 10, form).ok).toBe(true);
    expect(dose(200, 0, copperForms[form].band.high + 5e-9, 10, form).ok).toBe(false);
  });

  it('applied, lands on the wanted level', () => {
    const level = fc.double({ min: 0, max: 2.55, noNaN: true });
    const size = fc.double({ min: 0.2, max: 5000, noNaN: true });
    fc.assert(
      fc.property(level, level, size, size, (a, b, volume, strength) => {
        const [from, to] = [Math.min(a, b), Math.max(a, b)];
        const added = dose(volume, from, to, strength);
        if (!added.ok) return false;
        const rise = copperRise({ volume: litres(volume), added: added.value, strength: copperMgPerMl(strength) });
        return Math.abs(from + rise - to) <= 1.01e-9;
      }),
    );
  });
});
