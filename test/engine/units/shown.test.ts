import { shown, shownNumber } from '../../../src/engine/units/shown.js';

describe('shownNumber', () => {
  it.each([
    [2.05, '2.05'],
    [0.1 + 0.2, '0.3'],
    [1 / 3, '0.3333333333'],
    [-0, '0'],
    [2250, '2250'],
    [1.7976931348623157e308, '1.7976931348623157e+308'],
    [Infinity, 'over 1e308'],
    [-Infinity, 'under -1e308'],
  ])('writes %d as %s', (x, text) => {
    expect(shownNumber(x)).toBe(text);
  });
});

describe('shown', () => {
  it.each([
    [null, 'blank'],
    [2.05, '2.05'],
    [true, 'TRUE'],
    ['purple', '"purple"'],
    [' two\nlines\u0000 ', '"two lines"'],
    ['x'.repeat(40), `"${'x'.repeat(40)}"`],
    ['x'.repeat(41), `"${'x'.repeat(39)}…"`],
    ['🐠'.repeat(41), `"${'🐠'.repeat(39)}…"`],
    [{ error: '#N/A' }, 'the error #N/A'],
    [{ cells: 3 }, '3 cells'],
  ])('repeats %p as %s', (cell, text) => {
    expect(shown(cell)).toBe(text);
  });
});
