import { standInHost, type Answer, type ArgumentIn } from '../host/standInHost.js';

const host = standInHost();
const call = (id: string, ...args: readonly ArgumentIn[]): Answer => host.call(id, ...args);
const refused = (message: string) => ({ error: '#VALUE!', message });
const saying = (words: string | RegExp, error = '#VALUE!') => ({
  error,
  message: typeof words === 'string' ? (expect.stringContaining(words) as string) : expect.stringMatching(words),
});

describe('NETVOLUME', () => {
  it('takes centimetres, inches and feet, litres and gallons', () => {
    // 90 cm × 45 cm × 42 cm = 170.1 L.
    expect(call('NETVOLUME', 90, 45, 42)).toBeCloseTo(170.1, 9);
    expect(call('NETVOLUME', '900 mm', '0.45 m', 42)).toBeCloseTo(170.1, 9);
    // 36 in × 18 in × 16 in = 10368 in³, and 231 in³ are a US gallon of 3.785411784 L.
    expect(call('NETVOLUME', '3 ft', '18 inches', '16 in')).toBeCloseTo((10368 / 231) * 3.785411784, 9);
    // Less 60 % of 90 × 45 × 5 cm of sand and 4 L of rock, plus 10 US gallons in the sump.
    expect(call('NETVOLUME', 90, 45, 42, 5, '4 L', '10 gal')).toBeCloseTo(170.1 - 12.15 - 4 + 37.85411784, 9);
  });

  it('takes sand of 0, and refuses sand deeper than the water and a tank without water', () => {
    expect(call('NETVOLUME', 90, 45, 42, 0, 0, 0)).toBeCloseTo(170.1, 9);
    expect(call('NETVOLUME', 90, 45, 42, 43)).toEqual(
      refused('sand depth 43 is more than water depth 42 cm; write at most 42'),
    );
    expect(call('NETVOLUME', 90, 45, 42, 0, 171)).toEqual(saying('leave -0.9 L of water'));
    expect(call('NETVOLUME', 0, 45, 42)).toEqual(refused('length 0 is outside its limits; write a value above 0 cm'));
    expect(call('NETVOLUME', 90, -45, 42)).toEqual(saying(/^width -45 is outside its limits/));
  });

  it('lists the units it knows where it meets another', () => {
    expect(call('NETVOLUME', '90 hands', 45, 42)).toEqual(
      refused('length "90 hands" has an unknown unit; write one of these: cm mm m in ft'),
    );
    expect(call('NETVOLUME', 90, 45, 42, 0, '2 buckets')).toEqual(saying('L mL gal, imp gal, cc tsp tbsp fl oz'));
  });

  it('refuses three digits after a comma', () => {
    expect(call('NETVOLUME', '1,250', 45, 42)).toEqual(
      refused('length "1,250" may be a decimal or thousands; write a decimal point, or leave the comma out'),
    );
    expect(call('NETVOLUME', '90,5', 45, 42)).toBeCloseTo(90.5 * 45 * 42 * 1e-3, 9);
  });
});

describe('VOLUMEBYDOSE', () => {
  it('gives the volume, and 0.05 for the accuracy that is left out', () => {
    expect(call('VOLUMEBYDOSE', 20, 4, 0, 0.5)).toBeCloseTo(160, 9);
    expect(call('VOLUMEBYDOSE', '4 tsp', '4 g/L', '0 ppm', '500 ug/L')).toBeCloseTo((4 * 4.92892159375 * 4) / 0.5, 6);
    expect(call('VOLUMEBYDOSE', 20, 4, 0, 0.3)).toBeCloseTo(80 / 0.3, 6);
  });

  it('waits for a bigger rise', () => {
    expect(call('VOLUMEBYDOSE', 20, 4, 0, 0.29)).toEqual(
      saying('differ by 0.29 mg/L, too small to measure; give a bigger dose', '#N/A'),
    );
    expect(call('VOLUMEBYDOSE', 20, 4, 0, 0.29, 0.04)).toBeCloseTo(80 / 0.29, 6);
    expect(call('VOLUMEBYDOSE', 20, 4, 0.5, 0.5, 0)).toMatchObject({ error: '#N/A' });
  });

  it('asks for a test where a level is blank', () => {
    const message = 'before is blank; test first, then write the reading, like 2.05 or "2.05 ppm"';
    for (const blank of [null, '', 'none', '-']) {
      expect(call('VOLUMEBYDOSE', 20, 4, blank, 0.5)).toEqual({ error: '#N/A', message });
    }
  });
});

describe('STRENGTH', () => {
  it('reads a label, and doubts an unlikely one', () => {
    expect(call('STRENGTH', 5, 40, 0.5)).toBe(4);
    expect(call('STRENGTH', '5 mL', '10 gal', '0.5 ppm')).toBeCloseTo(3.785411784, 9);
    expect(call('STRENGTH', 5, 4000, 0.5)).toEqual(
      refused('dose, treats and raises make 400 mg/mL, outside 0.2–100; check mL, litres or gallons'),
    );
  });
});

describe('STOCKSTRENGTH and STOCKGRAMS', () => {
  it('count the element, and the pentahydrate where the salt is left out', () => {
    expect(call('STOCKSTRENGTH', 3, 0.75)).toBeCloseTo(1.01805, 5);
    expect(call('STOCKSTRENGTH', '3000 mg', '750 mL', 'Pentahydrate')).toBeCloseTo(1.01805, 5);
    expect(call('STOCKSTRENGTH', 3, 0.75, 'anhydrous')).toBeCloseTo(4 * 0.398153, 5);
    expect(call('STOCKGRAMS', call('STOCKSTRENGTH', 3, 0.75) as number, 0.75)).toBeCloseTo(3, 9);
    expect(call('STOCKGRAMS', 1, 1, 'anhydrous')).toBeCloseTo(1 / 0.398153, 4);
  });

  it('list the salts', () => {
    expect(call('STOCKSTRENGTH', 3, 0.75, 'chloride')).toEqual(
      refused('salt "chloride" is not known; write "pentahydrate" or "anhydrous"'),
    );
  });
});

describe('THIN', () => {
  it('gives stock and water', () => {
    expect(call('THIN', 10, 1, 500)).toEqual([
      ['Stock mL', 'Water mL'],
      [50, 450],
    ]);
    expect(call('THIN', 10, 10, '1 L')).toEqual([
      ['Stock mL', 'Water mL'],
      [1000, 0],
    ]);
  });

  it('does not strengthen', () => {
    expect(call('THIN', 1, 10, 500)).toEqual(saying(/^wanted strength 10 is more than strength 1/));
  });
});

describe('MGPERL', () => {
  it.each([
    [2.05, 2.05],
    ['2.05', 2.05],
    ['2,05', 2.05],
    ['2.05 ppm', 2.05],
    ['2.05MG/L', 2.05],
    ['2250 ug/L', 2.25],
    ['2250 µg/L', 2.25],
    ['2250 ppb', 2.25],
    ['~2.1', 2.1],
    ['2.1ish', 2.1],
    ['2.1?', 2.1],
    ['2.0-2.25', 2],
    ['0.19/0.20', 0.19],
    ['1.05 x2', 2.1],
    ['0', 0],
    [0, 0],
    [20, 20],
    [{ type: 'FormattedNumber', basicValue: 2.05, numberFormat: '0.00' }, 2.05],
  ])('reads %p', (cell, level) => {
    expect(call('MGPERL', cell)).toBeCloseTo(level, 12);
  });

  it('leaves blank what was not tested or was set aside', () => {
    for (const blank of [null, '', ' ', 'none', 'None', '-', 'void 1.62', { type: 'Empty' }]) {
      expect(call('MGPERL', blank)).toBe('');
    }
  });

  it('refuses a bound, which is not one level', () => {
    expect(call('MGPERL', '<0.05')).toEqual(
      refused('reading "<0.05" is a bound, not one level; write one level, like 2.05 or "2.05 ppm"'),
    );
    expect(call('MGPERL', '>5.0')).toEqual(saying('is a bound'));
  });

  it('refuses anything else, and says what to write', () => {
    for (const cell of ['LOW', 'ok', true, '2 drops', '2.0.5', '1,250', -1, '-0.1', 20.01, '25 ppm', 'void purple']) {
      expect(call('MGPERL', cell)).toEqual(saying(/^reading .*; (write|if|check)/));
    }
    expect(call('MGPERL', 'x'.repeat(300))).toEqual(saying(`"${'x'.repeat(39)}…"`));
  });
});
