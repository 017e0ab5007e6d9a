import { isoOfSerial, serialOfIso } from '../../../src/sheet/book/isoDay';

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

describe('isoOfSerial', () => {
  it.each([
    [46110, '2026-03-29'],
    [46110 + 2.5 / 24, '2026-03-29T02:30:00'],
    [0, '1899-12-30'],
    [60, '1900-02-28'],
    [61, '1900-03-01'],
    [-693_593, '0001-01-01'],
    [2_958_465, '9999-12-31'],
    [46110 + 1.5 / 86_400, '2026-03-29T00:00:01.500'],
    [46110.999999999, '2026-03-30T00:00:00'],
  ])('%d is %s', (serial, text) => {
    expect(isoOfSerial(serial)).toBe(text);
  });

  it.each([-693_594, 2_958_466, NaN, Infinity])('%d is no day of a calendar', (serial) => {
    expect(isoOfSerial(serial)).toBeUndefined();
  });

  it('agrees with the calendar of the runtime, and reads back as it was', () => {
    const origin = Date.UTC(1899, 11, 30);
    for (let serial = -693_593; serial < 2_958_465; serial += 997.3125) {
      const text = isoOfSerial(serial) ?? '';
      const date = new Date(origin + serial * 86_400_000).toISOString();
      expect(text).toBe(Number.isInteger(serial) ? date.slice(0, 10) : date.slice(0, -1).replace('.000', ''));
      expect(serialOfIso(text)).toBeCloseTo(serial, 9);
    }
  });
});
