import { medicinesIn } from '../../../src/engine/plan/medicinesIn.js';

describe('medicinesIn', () => {
  it('reads the names in cells, blank ones left out, numbers kept as they are', () => {
    expect(medicinesIn([null, '', 0, 'praziquantel, formalin', 12, true])('other medicines')).toEqual({
      ok: true,
      value: ['praziquantel', 'formalin', '12', 'true'],
    });
    expect(medicinesIn([])('other medicines')).toEqual({ ok: true, value: [] });
  });

  it('refuses an error cell', () => {
    expect(medicinesIn(['formalin', { error: '#REF!' }])('other medicines')).toEqual({
      ok: false,
      problem: { code: 'error-cell', at: { field: 'other medicines' }, given: '#REF!' },
    });
  });
});
