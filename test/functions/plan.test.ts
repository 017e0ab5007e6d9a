import { standInHost, type Answer, type ArgumentIn } from '../host/standInHost.js';

const host = standInHost();
const call = (id: string, ...args: readonly ArgumentIn[]): Answer => host.call(id, ...args);
const column = (...cells: unknown[]) => cells.map((cell) => [cell as number]);
const rowsOf = (answer: Answer): readonly (readonly unknown[])[] => (answer as unknown[][]).slice(1);

describe('SIGNS', () => {
  const when = column('Date', 46082, 46083, 46084, 46085, 46090);
  const signs = column('Signs', 'not eating', null, 'eating again', 'purple', 'breathing heavily');

  it('spills a row for every text', () => {
    expect(call('SIGNS', when, signs)).toEqual([
      ['When', 'Seen', 'Step'],
      [46082, 'not eating', 'test first'],
      [46084, 'eating again', 'raise slowly'],
      [46085, 'purple', 'unread'],
      [46090, 'breathing heavily', 'stop copper'],
    ]);
  });

  it('takes "none" for a blank, and a remark about something else for no recovery', () => {
    const days = column(46082, 46083, 46084, 46084.5);
    expect(rowsOf(call('SIGNS', days, column('not eating', 'none', 'no spots', 'not eating')))).toEqual([
      [46082, 'not eating', 'test first'],
      [46084, 'no spots', 'lower and wait'],
      [46084.5, 'not eating', 'lower and wait'],
    ]);
  });

  it('says none where nothing was written', () => {
    expect(call('SIGNS', column(46082, null), column('', null))).toEqual([
      ['When', 'Seen', 'Step'],
      ['none', '', ''],
    ]);
  });

  it('names what is wrong', () => {
    expect(call('SIGNS', column(46082, null), column('fine', 'not eating'))).toEqual({
      error: '#VALUE!',
      message: 'row 2: the text "not eating" has no time; write its date and time, like "2026-03-01 08:00"',
    });
    expect(call('SIGNS', column(46082, 46083), column('fine'))).toMatchObject({
      error: '#VALUE!',
      message: expect.stringContaining('when has 2 cells, signs 1') as string,
    });
  });
});

describe('PLAN', () => {
  const finish = (...args: readonly ArgumentIn[]): unknown =>
    rowsOf(call('PLAN', ...args)).find((row) => String(row[2]).startsWith('finish'))?.[0];

  it('takes 30 days and a gradual raise where nothing else is said', () => {
    expect((call('PLAN', 46082, 'chelated') as unknown[][])[0]).toEqual(['When', 'Day', 'Do', 'Why']);
    expect(finish(46082, 'chelated')).toBe(46116);
    expect(finish(46082, 'chelated', null, null, null)).toBe(46116);
    expect(finish(46082, 'chelated', 0, 0, [['']])).toBe(46116);
    expect(finish('2026-03-01 06:00', 'Amine copper', '21 days', 'urgent')).toBe(46082.25 + 22);
    expect(finish(46082, 'sulfate', 14, 3)).toBe(46099);
  });

  it('puts the test that decides 2 h after the dose of RAMP that reaches 80 %', () => {
    for (const pace of ['gradual', 'sensitive', 'urgent', 1, 2, 3]) {
      const doses = rowsOf(call('RAMP', 1000, 0, 2.25, 1, 46082, pace));
      const [at = NaN, , level = NaN] = doses.find((row) => Number(row[2]) >= 1.8 - 1e-9) ?? [];
      const test = rowsOf(call('PLAN', 46082, 'chelated', 30, pace)).find((row) => /^test, 2 h/.test(String(row[2])));
      expect([pace, Number(test?.[0])]).toEqual([pace, expect.closeTo(Number(at) + 2 / 24, 6)]);
      expect(String(test?.[2])).toContain(`about ${Math.round(Number(level) * 1000) / 1000} mg/L`);
    }
  });

  it('takes other medicines from a cell or a range', () => {
    const doing = rowsOf(
      call('PLAN', 46082, 'chelated', 30, '', [['praziquantel; moon dust'], [null], ['carbon']]),
    ).map((row) => String(row[2]));
    expect(doing.filter((line) => /^praziquantel|moon dust|"carbon"/.test(line)).length).toBe(4);
  });

  it.each([
    [[46082, 'ionic'], 'form "ionic" is unclear'],
    [[46082, ''], 'form is blank; write "sulfate", "amine" or "chelated"'],
    [[46082, 2], 'form 2'],
    [['soon', 'chelated'], 'start "soon" is not a time'],
    [[46082, 'chelated', -3], 'days -3'],
    [[46082, 'chelated', 30, 'fast'], 'pace "fast"'],
    [
      [46082, 'chelated', 30, '', [[{ type: 'Error', basicValue: '#REF!' }]]],
      'other medicines holds the spreadsheet error #REF!',
    ],
  ])('names what is wrong with %j', (args, words) => {
    expect(call('PLAN', ...(args as ArgumentIn[]))).toMatchObject({
      error: '#VALUE!',
      message: expect.stringContaining(words) as string,
    });
  });
});

describe('OBSERVEUNTIL', () => {
  it('gives two cells, and 28 days for both after a low chelated hold', () => {
    expect(call('OBSERVEUNTIL', 46116)).toEqual([[46130, 46144]]);
    expect(call('OBSERVEUNTIL', 46116, 2.05)).toEqual([[46144, 46144]]);
    expect(call('OBSERVEUNTIL', 46116, '2100 ug/L', 'chelated')).toEqual([[46130, 46144]]);
    expect(call('OBSERVEUNTIL', 46116, 0.2, 'sulphate')).toEqual([[46130, 46144]]);
    expect(call('OBSERVEUNTIL', '2026-04-04', null, null)).toEqual([[46130, 46144]]);
  });

  it('names what is wrong', () => {
    expect(call('OBSERVEUNTIL', '')).toMatchObject({
      error: '#VALUE!',
      message: expect.stringContaining('ended') as string,
    });
    expect(call('OBSERVEUNTIL', 46116, 25)).toMatchObject({
      error: '#VALUE!',
      message: expect.stringContaining('20 mg/L') as string,
    });
  });
});
