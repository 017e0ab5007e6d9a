import { bandOf } from '../../../src/engine/dose/bandOf.js';
import { formOf } from '../../../src/engine/dose/formOf.js';
import { copperForms, formNames } from '../../../src/engine/dose/forms.js';
import { references } from '../../../src/engine/references/references.js';
import { freeCopperBand } from '../published/ZecHadfieldHungerford2021.js';
import { eachRow } from '../published/publishedTable.js';

describe('formOf', () => {
  it.each([
    ['sulfate', 'sulfate'],
    ['Sulphate', 'sulfate'],
    ['CITRATE', 'sulfate'],
    [' citrated  copper ', 'sulfate'],
    ['sulfate copper', 'sulfate'],
    ['copper sulfate', 'sulfate'],
    ['amine', 'amine'],
    ['Amine Copper', 'amine'],
    ['chelated', 'chelated'],
    ['chelated copper', 'chelated'],
    ['Chelated\u00a0Copper', 'chelated'],
  ])('reads %j as %s', (text, form) => {
    expect(formOf(text, 'form')).toEqual({ ok: true, value: form });
  });

  it.each(['ionic', 'Copper', 'ionic copper', ' IONIC  COPPER '])('refuses %j with the choice', (text) => {
    expect(formOf(text, 'band')).toMatchObject({ ok: false, problem: { code: 'form-unclear', field: 'band' } });
  });

  it.each(['nitrate', 'chelate d', 'copper copper', 'chelated copper copper', '', 'toString', '2.0'])(
    'does not know %j',
    (text) => {
      expect(formOf(text, 'form')).toMatchObject({ ok: false, problem: { code: 'not-a-form', field: 'form' } });
    },
  );
});

describe('bandOf', () => {
  it('matches the band of ZecHadfieldHungerford2021', () => {
    eachRow(freeCopperBand, ([low, high]) => expect(bandOf('sulfate')).toEqual({ low, high }));
  });

  it('holds the bands of common practice', () => {
    expect(bandOf('amine')).toEqual({ low: 0.45, high: 0.55 });
    expect(bandOf('chelated')).toEqual({ low: 1.95, high: 2.55 });
  });
});

describe('copperForms', () => {
  it.each(formNames)('keeps aim, inner limits and source of %s in order', (name) => {
    const { band, inner, aim, usualLossPerDay, source } = copperForms[name];
    expect(band.low).toBeLessThanOrEqual(inner.low);
    expect(inner.low).toBeLessThanOrEqual(aim);
    expect(aim).toBeLessThanOrEqual(inner.high);
    expect(inner.high).toBeLessThanOrEqual(band.high);
    expect(usualLossPerDay).toBeGreaterThan(0);
    expect(usualLossPerDay).toBeLessThanOrEqual(0.1);
    expect(references[source]).toBeDefined();
  });

  it('allows 0.05 at either end of the chelated band alone', () => {
    expect(copperForms.chelated.inner).toEqual({ low: 2, high: 2.5 });
    expect(copperForms.sulfate.inner).toEqual(copperForms.sulfate.band);
    expect(copperForms.amine.inner).toEqual(copperForms.amine.band);
  });
});
