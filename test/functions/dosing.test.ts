import { standInHost, type Answer, type ArgumentIn } from '../host/standInHost.js';

const host = standInHost();
const call = (id: string, ...args: readonly ArgumentIn[]): Answer => host.call(id, ...args);
const refused = (message: string) => ({ error: '#VALUE!', message });
const saying = (words: string | RegExp, error = '#VALUE!') => ({
  error,
  message: typeof words === 'string' ? (expect.stringContaining(words) as string) : expect.stringMatching(words),
});
const table = (id: string, ...args: readonly ArgumentIn[]): (readonly (number | string)[])[] =>
  call(id, ...args) as (number | string)[][];

describe('DOSE', () => {
  it('takes numbers, text and units', () => {
    expect(call('DOSE', 200, '0 mg/L', 2.25, 10)).toBeCloseTo(45, 9);
    expect(call('DOSE', '200 L', '0 ppm', '2250 ug/L', '10 mg/mL', 'chelated')).toBeCloseTo(45, 9);
    expect(call('DOSE', '50 gal', '0 mg/L', 0.2, 1, 'sulfate')).toBeCloseTo(37.85411784, 8);
    expect(call('DOSE', 200, 2.25, 2.25, 10)).toBe(0);
  });

  it('says in the words of the contract that it cannot lower', () => {
    expect(call('DOSE', 200, 2.5, 2, 10)).toEqual(
      refused('wanted 2 is below the level 2.5; lowering takes a water change, see QT.CHANGETOLOWER'),
    );
  });

  it('guards the top of the band', () => {
    expect(call('DOSE', 200, 0, 0.22, 10, 'sulfate')).toEqual(
      refused('wanted 0.22 is above the sulfate band, 0.18–0.21; write at most 0.21'),
    );
    expect(call('DOSE', 200, '0 mg/L', 2.55, 10)).toBeCloseTo(51, 9);
    expect(call('DOSE', 200, 0, 2.56, 10)).toEqual(saying('write at most 2.55'));
    expect(call('DOSE', 200, 0, 0.2, 10, 'ionic')).toEqual(saying(/^form "ionic" is unclear/));
  });

  it('wants a test where the level is blank, and a value where another argument is', () => {
    const zero = saying('level is 0 or empty; write "0 mg/L" if it was tested', '#N/A');
    expect(call('DOSE', 200, 0, 2.25, 10)).toEqual(zero);
    expect(call('DOSE', 200, 0, 0, 10)).toEqual(zero);
    expect(call('DOSE', 200, '', 2.25, 10)).toEqual(saying(/^level is blank; test first/, '#N/A'));
    expect(call('DOSE', null, 0, 2.25, 10)).toEqual(
      refused('volume is blank; write litres, like 200, "200 L" or "50 gal"'),
    );
    expect(call('DOSE', 200, 0, 2.25, null)).toEqual(
      refused('strength is blank; write mg of copper per mL, like 1.02 or "1.02 mg/mL"'),
    );
    expect(call('DOSE', '200 tanks', 0, 2.25, 10)).toEqual(saying('one of these: L mL gal, imp gal'));
    expect(call('DOSE', 200, '<0.05', 2.25, 10)).toMatchObject({ error: '#VALUE!' });
    expect(call('DOSE', 200, 25, 2.25, 10)).toEqual(saying('level 25 is more than 20 mg/L; if it is ug/L'));
    expect(call('DOSE', 0, 0, 2.25, 10)).toEqual(saying('volume 0 is outside its limits; write a value above 0 L'));
  });
});

describe('RISE', () => {
  it('gives mg/L', () => {
    expect(call('RISE', 200, 10, 4)).toBeCloseTo(0.2, 12);
    expect(call('RISE', '200 L', '10 cc', '4 mg/mL')).toBeCloseTo(0.2, 12);
    expect(call('RISE', 1e-300, 1e300, 1e300)).toEqual(
      refused('the answer is too large a number to show; check the units and write smaller values'),
    );
  });
});

describe('DOSESPLIT', () => {
  it('counts hours where there is no first time', () => {
    expect(table('DOSESPLIT', 9.5, 4)).toEqual([
      ['Hours', 'Dose mL', 'Running mL'],
      [0, 2.4, 2.4],
      [4, 2.4, 4.8],
      [8, 2.3, 7.1],
      [12, 2.4, 9.5],
    ]);
  });

  it('starts each day 24 h after the last', () => {
    const [heading, ...rows] = table('DOSESPLIT', '12 mL', 3, '2 days', '2026-03-01 08:00', '4 h', 0.5);
    expect(heading).toEqual(['When', 'Dose mL', 'Running mL']);
    const hours = rows.map((row) => Math.round((Number(row[0]) - 46082) * 24));
    expect(hours).toEqual([8, 12, 16, 32, 36, 40]);
    expect(rows.map((row) => row[1])).toEqual([2, 2, 2, 2, 2, 2]);
  });

  it('refuses a step of 0, and doses that do not fit in a day', () => {
    expect(call('DOSESPLIT', 0.3, 5)).toEqual(
      refused(
        '0.3 mL in 5 doses makes steps of 0 at smallest 0.1 mL; give fewer doses or a thinner solution, see QT.THIN',
      ),
    );
    expect(call('DOSESPLIT', 10, 5, 1, null, 6)).toEqual(
      refused('doses a day 5, hours between 6: they do not fit in 24 h; write fewer doses or fewer hours'),
    );
    expect(call('DOSESPLIT', 10, 2.5)).toEqual(refused('doses a day 2.5 is not a whole number; write one like 3'));
    expect(call('DOSESPLIT', 10, 0)).toEqual(saying(/^doses a day 0 /));
    expect(call('DOSESPLIT', 10, 4, 1, 0.5)).toEqual(saying(/^first dose at 0.5 is a time without its date/));
    expect(call('DOSESPLIT', 10, 4, 1, null, null, '0 mL')).toEqual(saying(/^smallest "0 mL" is outside its limits/));
  });
});

describe('RAMP', () => {
  const start = '2026-03-01 08:00';

  it('has the days and doses of each pace', () => {
    const doses = (...more: readonly ArgumentIn[]) => table('RAMP', 200, 0, 2.25, 10, start, ...more).length - 1;
    expect(doses()).toBe(20);
    expect(doses('gradual')).toBe(20);
    expect(doses('Sensitive')).toBe(35);
    expect(doses('urgent')).toBe(4);
    expect(doses(3)).toBe(15);
    expect(doses('3 days')).toBe(15);
    expect(doses(3, 4)).toBe(12);
    expect(call('RAMP', 200, 0, 2.25, 10, start, 'fast')).toEqual(
      refused('pace "fast" is not known; write "gradual", "sensitive" or "urgent"'),
    );
  });

  it('ends at or just under the wanted level, with tests on the way', () => {
    const [heading, ...rows] = table('RAMP', 200, 0.2, 2.25, 10, start, 'gradual', null, 'chelated');
    expect(heading).toEqual(['When', 'Dose mL', 'Level after', 'Do']);
    expect(rows.at(-1)?.[2]).toBeCloseTo(2.25, 9);
    expect(rows.every((row) => Number(row[2]) <= 2.25)).toBe(true);
    expect(rows.filter((row) => String(row[3]).startsWith('test first')).length).toBe(4);
    for (const row of rows) expect(String(row[3]).includes('15 %')).toBe(Number(row[2]) >= 0.8 * 2.25 - 1e-9);
  });

  it('is guarded as DOSE', () => {
    expect(call('RAMP', 200, 0, 0.3, 10, start, null, null, 'sulfate')).toEqual(saying('above the sulfate band'));
    expect(call('RAMP', 200, 2.5, 2, 10, start)).toEqual(saying('see QT.CHANGETOLOWER'));
    expect(call('RAMP', 200, '', 2, 10, start)).toMatchObject({ error: '#N/A' });
    expect(call('RAMP', 200, 0, 2, 10, 'tomorrow')).toEqual(saying(/^start "tomorrow" is not a time/));
  });

  it('says none where nothing is to be raised', () => {
    expect(call('RAMP', 200, 2.25, 2.25, 10, start)).toEqual([
      ['When', 'Dose mL', 'Level after', 'Do'],
      ['none', '', '', ''],
    ]);
  });
});
