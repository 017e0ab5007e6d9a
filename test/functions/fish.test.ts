import { standInHost, type Answer, type ArgumentIn } from '../host/standInHost.js';

const host = standInHost();
const call = (id: string, ...args: readonly ArgumentIn[]): Answer => host.call(id, ...args);
const column = (...cells: unknown[]) => cells.map((cell) => [cell as number]);

describe('TOLERANCE', () => {
  it('answers a cell of names, a row each', () => {
    const table = call('TOLERANCE', 'Yellow tang; torch coral, clownfish') as string[][];
    expect(table[0]).toEqual(['Fish', 'Advice', 'Why', 'Source']);
    expect(table.slice(1).map((row) => row.slice(0, 2))).toEqual([
      ['Yellow tang', 'caution'],
      ['torch coral', 'never'],
      ['clownfish', 'usual care'],
    ]);
  });

  it('answers a column, blank cells and its heading left out', () => {
    const table = call('TOLERANCE', column('Fish', 'seahorse', null, '', 'mandrin', null)) as string[][];
    expect(table.slice(1).map((row) => row.slice(0, 2))).toEqual([
      ['seahorse', 'avoid'],
      ['mandrin', 'not listed'],
    ]);
    expect(table[2]?.[2]).toMatch(/not the same as safe or tolerant.*Nearest names on the list: mandarin[, ]/);
  });

  it('has one row that says none where there is no fish', () => {
    expect(call('TOLERANCE', column(null, ''))).toEqual([
      ['Fish', 'Advice', 'Why', 'Source'],
      ['none', '', '', ''],
    ]);
  });

  it('names the row of what is no name', () => {
    expect(call('TOLERANCE', column('clownfish', 12))).toEqual({
      error: '#VALUE!',
      message: 'row 2: 12 is not a name of a fish; write a name, like "yellow tang", or leave it empty',
    });
    expect(call('TOLERANCE', column('clownfish', { type: 'Error', basicValue: '#N/A' }))).toMatchObject({
      error: '#VALUE!',
      message: expect.stringMatching(/^row 2 holds the spreadsheet error #N\/A;/) as string,
    });
    expect(call('TOLERANCE', 12)).toMatchObject({ message: expect.stringMatching(/^fish 12 is not/) as string });
    expect(
      call('TOLERANCE', [
        ['a', 'b'],
        ['c', 'd'],
      ]),
    ).toMatchObject({ error: '#VALUE!' });
  });
});

describe('TREATMENTFOR', () => {
  it('answers a condition by any of its names', () => {
    const table = call('TREATMENTFOR', 'Ich') as string[][];
    expect(table[0]).toEqual(['Condition', 'Copper', 'Give', 'When', 'Source']);
    expect(table).toEqual(call('TREATMENTFOR', 'white spot'));
    expect(table.at(-1)?.[2]).toBe('an aquatic veterinarian decides');
    expect((call('TREATMENTFOR', 'unknown') as string[][]).length).toBeGreaterThan(3);
  });

  it('offers the nearest conditions for one it does not know', () => {
    expect(call('TREATMENTFOR', 'velvit')).toMatchObject({
      error: '#VALUE!',
      message: expect.stringMatching(/^condition "velvit" is not known; write "velvet"/) as string,
    });
    expect(call('TREATMENTFOR', null)).toMatchObject({ error: '#VALUE!' });
    expect(call('TREATMENTFOR', 3)).toMatchObject({
      message: 'condition 3 is not a condition; write one like "white spot", or "unknown"',
    });
  });
});
