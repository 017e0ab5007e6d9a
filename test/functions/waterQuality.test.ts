import { standInHost, type Answer, type ArgumentIn } from '../host/standInHost.js';

const host = standInHost();
const call = (id: string, ...args: readonly ArgumentIn[]): Answer => host.call(id, ...args);
const column = (...cells: unknown[]) => cells.map((cell) => [cell as number]);

describe('FREEAMMONIA', () => {
  it('gives NH3, whatever the basis of total', () => {
    // 2.98 % of 1 mg/L at pH 8.0, 20 °C, salinity 34, within 2 %.
    const asAmmonia = call('FREEAMMONIA', 1, 8, 20, 34) as number;
    expect(Math.abs(asAmmonia / 0.0298 - 1)).toBeLessThan(0.02);
    expect(call('FREEAMMONIA', 1, 8, 20, 34, 'nh3')).toBe(asAmmonia);
    expect(call('FREEAMMONIA', '1 ppm', '8', '68 F', '34 ppt', '')).toBeCloseTo(asAmmonia, 12);
    expect(call('FREEAMMONIA', 1, 8, 20, 34, 'N')).toBeCloseTo(asAmmonia * 1.21589, 6);
  });

  it('names range and source where the formula does not reach', () => {
    expect(call('FREEAMMONIA', 1, 8.6, 25, 35)).toEqual({
      error: '#VALUE!',
      message: 'pH 8.6 is outside 7.5–8.5, the range of Bower, Bidwell (1978); write a value inside it',
    });
    expect(call('FREEAMMONIA', 1, 8.2, 36, 35)).toMatchObject({
      error: '#VALUE!',
      message: expect.stringContaining('5–35 °C') as string,
    });
    expect(call('FREEAMMONIA', 1, 8.2, 25, 4)).toMatchObject({
      error: '#VALUE!',
      message: expect.stringContaining('5–35 g/kg') as string,
    });
  });

  it('asks for a test where there is none, and refuses what is no number', () => {
    expect(call('FREEAMMONIA', null, 8.2, 25, 35)).toMatchObject({ error: '#N/A' });
    expect(call('FREEAMMONIA', -1, 8.2, 25, 35)).toMatchObject({ error: '#VALUE!' });
    expect(call('FREEAMMONIA', 1, 8.2, 25, 35, 'NH4')).toMatchObject({
      error: '#VALUE!',
      message: expect.stringContaining('"N" or "NH3"') as string,
    });
  });

  it('warns in its description that liquid tests read falsely positive', () => {
    const described = host.metadata.functions.find(({ id }) => id === 'FREEAMMONIA');
    expect(described?.description).toContain('liquid ammonia tests read falsely positive');
  });
});

describe('AMMONIACHANGE', () => {
  it('gives litres and millilitres', () => {
    expect(call('AMMONIACHANGE', '200 L', 1, 0.25, '2.25 ppm', 10)).toEqual([
      ['Change L', 'Copper mL for the new water'],
      [150, 33.75],
    ]);
    expect(call('AMMONIACHANGE', 200, 0.5, 0.5, 2.25, 10)).toEqual([
      ['Change L', 'Copper mL for the new water'],
      [0, 0],
    ]);
  });

  it('refuses to raise, to reach zero, and to start from none', () => {
    expect(call('AMMONIACHANGE', 200, 0.5, 1, 2.25, 10)).toEqual({
      error: '#VALUE!',
      message: 'wanted 1 is more than ammonia 0.5 mg/L; write at most 0.5',
    });
    expect(call('AMMONIACHANGE', 200, 0.5, 0, 2.25, 10)).toMatchObject({
      error: '#VALUE!',
      message: expect.stringContaining('wanted') as string,
    });
    expect(call('AMMONIACHANGE', 200, 0, 0.5, 2.25, 10)).toEqual({
      error: '#N/A',
      message: 'ammonia is 0 or empty; write "0 mg/L" if it was tested',
    });
    expect(call('AMMONIACHANGE', 200, 0.5, 0.25, 0, 10)).toEqual({
      error: '#N/A',
      message: 'level is 0 or empty; write "0 mg/L" if it was tested',
    });
    expect(call('AMMONIACHANGE', 200, 0, 0.5, 2.25, 0)).toMatchObject({ error: '#VALUE!' });
    expect(call('AMMONIACHANGE', 200, 0.5, 1, 0, 10)).toMatchObject({ error: '#VALUE!' });
    expect(call('AMMONIACHANGE', 200, '', 0.5, 2.25, 10)).toMatchObject({ error: '#N/A' });
    expect(call('AMMONIACHANGE', 200, 0.5, 0.25, '', 10)).toMatchObject({ error: '#N/A' });
  });
});

describe('SPECIFICGRAVITY and SALINITY', () => {
  it('go there and back, with 25 °C for the reference that is left out', () => {
    expect(call('SPECIFICGRAVITY', 35, 25)).toBeCloseTo(1.02637, 5);
    expect(call('SPECIFICGRAVITY', 35, 25, '60 F')).toBeCloseTo(1.02435, 5);
    expect(call('SPECIFICGRAVITY', '35 ppt', '68 F', 20)).toBeCloseTo(1.0266, 5);
    expect(call('SALINITY', call('SPECIFICGRAVITY', 33, 24) as number, 24, '')).toBeCloseTo(33, 9);
    expect(call('SALINITY', 1, 25)).toBe(0);
  });

  it('refuse what lies outside the equation, and name its source', () => {
    expect(call('SPECIFICGRAVITY', 43, 25)).toEqual({
      error: '#VALUE!',
      message: 'salinity 43 is outside 0–42 g/kg, the range of Fofonoff, Millard (1983); write a value inside it',
    });
    expect(call('SALINITY', 35, 25)).toMatchObject({
      error: '#VALUE!',
      message: expect.stringMatching(/^specific gravity 35 is outside 1–1\.03\d+,/) as string,
    });
    expect(call('SALINITY', 1.026, 41)).toMatchObject({ error: '#VALUE!' });
    expect(call('SALINITY', 1.026, 25, -1)).toMatchObject({
      error: '#VALUE!',
      message: expect.stringContaining('reference') as string,
    });
    expect(call('SALINITY', '', 25)).toMatchObject({ error: '#VALUE!' });
  });
});

describe('LOSSRATE', () => {
  const heading = ['% a day', 'Low', 'High', 'R²', 'Verdict'];
  const when = column('When', 46082, 46083, 46084, 46085);

  it('gives one row of numbers and a verdict', () => {
    const answer = call(
      'LOSSRATE',
      when,
      column('Copper', 2.4, 2.4 * 0.97, 2.4 * 0.97 ** 2, 2.4 * 0.97 ** 3),
    ) as unknown[][];
    expect(answer[0]).toEqual(heading);
    expect(answer[1]?.[0]).toBeCloseTo(3, 9);
    expect(answer[1]?.[4]).toBe('absorbs');
    expect(answer).toHaveLength(2);
  });

  it('takes what was added into account', () => {
    const answer = call(
      'LOSSRATE',
      when,
      column('Copper', 2, 2, 2, 2),
      column('Rise', null, 0.1, 0.1, '0.1 ppm'),
    ) as unknown[][];
    expect(answer[1]?.[0]).toBeCloseTo(5, 9);
  });

  it('says where there are too few readings', () => {
    expect(call('LOSSRATE', column(46082, 46083), column(2, 1.9))).toEqual([
      heading,
      ['', '', '', '', 'too few readings'],
    ]);
    expect(call('LOSSRATE', column(null), column(null))).toEqual([heading, ['', '', '', '', 'too few readings']]);
  });

  it('names the row of a fault', () => {
    expect(call('LOSSRATE', when, column('Copper', 2, 0, 1.8, 1.7))).toEqual({
      error: '#VALUE!',
      message: 'row 3: 0 is not one level above 0, and the loss needs one; write the level, or "none" if untested',
    });
    expect(call('LOSSRATE', when, column('Copper', 2, '<0.05', 1.8, 1.7))).toMatchObject({
      error: '#VALUE!',
      message: expect.stringMatching(/^row 3: <0\.05/) as string,
    });
    expect(call('LOSSRATE', when, column('Copper', 2, 1.9, 1.8, 1.7), column('', 0, 0, 1.9, 0))).toEqual({
      error: '#VALUE!',
      message: 'row 4: rise 1.9 is not below the reading 1.8 mg/L; write the mg/L added since the reading before',
    });
    expect(call('LOSSRATE', when, column(2, 1.9))).toMatchObject({
      error: '#VALUE!',
      message: expect.stringContaining('when has 5 cells, copper 2') as string,
    });
  });
});
