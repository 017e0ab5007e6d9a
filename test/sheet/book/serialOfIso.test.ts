import { serialOfIso } from '../../../src/sheet/book/serialOfIso';

describe('serialOfIso', () => {
  it.each([
    ['2026-03-29T02:30:00', 46110 + 2.5 / 24],
    ['2026-03-29', 46110],
    ['1900-03-01', 61],
    ['1904-01-01', 1462],
    ['2000-02-29T23:59:59.5Z', 36585 + 86_399.5 / 86_400],
    ['2026-03-29 08:00', 46110 + 8 / 24],
    ['2026-03-29T08:00:00+02:00', 46110 + 8 / 24],
  ])('%s', (text, serial) => {
    expect(serialOfIso(text)).toBeCloseTo(serial, 9);
  });

  it.each(['2026-02-30', '2026-13-01', 'yesterday', '', '2026-3-1', '08:30'])('%s is no date', (text) => {
    expect(serialOfIso(text)).toBeUndefined();
  });
});
