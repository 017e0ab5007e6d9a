import { standInHost, type Answer, type ArgumentIn } from '../host/standInHost.js';

const host = standInHost();
const call = (id: string, ...args: readonly ArgumentIn[]): Answer => host.call(id, ...args);
const column = (...cells: unknown[]) => cells.map((cell) => [cell as number]);
const saying = (words: string) => expect.stringContaining(words) as string;

describe('HOLDCHANCE', () => {
  const when = column('When', '2026-03-01 08:00', 46083, 46084.25);
  const copper = column('Copper', 2.05, '2.1 ppm', '2,05');

  it('is one number from 0 to 1, whatever way its arguments are written', () => {
    const chance = call('HOLDCHANCE', when, copper, 'chelated', 0.1) as number;
    expect(chance).toBeGreaterThan(0.9);
    expect(chance).toBeLessThan(1);
    expect(call('HOLDCHANCE', when, copper, 1.95, '0.1 mg/L', null, '')).toBe(chance);
    expect(call('HOLDCHANCE', when, copper, [[1.95, 2.55]], '100 ug/L', 0, 0.0195)).toBe(chance);
    const percent = call('HOLDCHANCE', when, copper, 'chelated', 0.1, 5);
    expect(percent).toBeLessThan(chance);
    for (const written of ['5%', 0.05]) {
      expect(call('HOLDCHANCE', when, copper, 'chelated', 0.1, written)).toBe(percent);
    }
  });

  it('is not cut by an untested stretch', () => {
    const chance = call('HOLDCHANCE', column(46082, 46092), column(2.02, 2.5), 1.95, 0.1) as number;
    expect(chance).toBeLessThan(call('HOLDCHANCE', column(46092), column(2.5), 1.95, 0.1) as number);
  });

  it('has nothing to say where nothing was read or no hold runs', () => {
    expect(call('HOLDCHANCE', column(null), column(null), 1.95, 0.1)).toMatchObject({ error: '#N/A' });
    expect(call('HOLDCHANCE', column(46082), column(1.9), 1.95, 0.1)).toMatchObject({
      error: '#N/A',
      message: saying('no hold is running'),
    });
  });

  it('asks what a 0 means that may be an empty cell', () => {
    expect(call('HOLDCHANCE', column(46082, 46083, 46084), column(2.1, 0, 2.1), 1.95, 0.1)).toMatchObject({
      error: '#N/A',
      message: saying('row 2 reads 0'),
    });
  });

  it('names the argument at fault, the others before the rows', () => {
    expect(call('HOLDCHANCE', when, column('Copper', 'LOW', 2, 2), 1.95, 0, 0)).toMatchObject({
      error: '#VALUE!',
      message: saying('accuracy and percent are both 0'),
    });
    expect(call('HOLDCHANCE', when, copper, 1.95, 0.1, '60%')).toMatchObject({
      error: '#VALUE!',
      message: saying('percent'),
    });
    expect(call('HOLDCHANCE', when, copper, 1.95, 0.1, 0, -1)).toMatchObject({
      error: '#VALUE!',
      message: saying('drift'),
    });
    expect(call('HOLDCHANCE', when, copper, 1.95, null)).toMatchObject({
      error: '#VALUE!',
      message: saying('accuracy'),
    });
    expect(call('HOLDCHANCE', when, column('Copper', 'LOW', 2, 2), 1.95, 0.1)).toMatchObject({
      error: '#VALUE!',
      message: saying('row 2'),
    });
  });
});

describe('AIM', () => {
  it('is the reading to keep', () => {
    expect(call('AIM', 'sulfate', 0.02)).toBeCloseTo(0.1967842, 6);
    expect(call('AIM', 'chelated', '0.05', '5%', 95)).toBeCloseTo(2.0792056, 6);
    const aim = call('AIM', 1.95, 0.05);
    for (const written of [95, '95%', 0.95, null]) expect(call('AIM', 1.95, 0.05, 0, written)).toBe(aim);
  });

  it('says that a meter cannot show a band', () => {
    expect(call('AIM', 'sulfate', 0.05)).toEqual({
      error: '#N/A',
      message:
        'this meter cannot show this band: to show 0.18 it would have to read 0.222, above the top 0.21; test with a better meter',
    });
  });

  it('refuses what is no chance', () => {
    for (const chance of [100, '120%', '0%', 1, -5, 'high']) {
      expect(call('AIM', 1.95, 0.05, 0, chance)).toMatchObject({ error: '#VALUE!', message: saying('chance') });
    }
  });
});

describe('METERFITS', () => {
  it('is a table of one row', () => {
    expect(call('METERFITS', [[0.15, 0.2]], 0.21, '5 ppm', 0.02)).toEqual([
      ['Can show the low', 'Can show the top', 'Keep at least', 'Why'],
      ['no', 'no', '', 'it reads from 0.21, above the top 0.2'],
    ]);
    const fits = call('METERFITS', 'chelated', 0, 5, 0.1) as unknown[][];
    expect(fits[1]?.slice(0, 2)).toEqual(['yes', 'yes']);
    expect(fits[1]?.[2]).toBeCloseTo(2.033921, 6);
  });

  it('names the argument at fault', () => {
    expect(call('METERFITS', 1.95, 5, 0.5, 0.1)).toMatchObject({
      error: '#VALUE!',
      message: 'reads from 5 is more than reads to 0.5 mg/L; write at most 0.5',
    });
    expect(call('METERFITS', 1.95, '', 5, 0.1)).toMatchObject({ error: '#VALUE!', message: saying('reads from') });
    expect(call('METERFITS', 'ionic', 0, 5, 0.1)).toMatchObject({ error: '#VALUE!' });
  });
});
