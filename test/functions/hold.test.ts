import { standInHost, type Answer, type ArgumentIn } from '../host/standInHost.js';
import { column, row } from './cells.js';

const host = standInHost();
const call = (id: string, ...args: readonly ArgumentIn[]): Answer => host.call(id, ...args);
const refused = (message: string) => ({ error: '#VALUE!', message });
const notYet = (message: string) => ({ error: '#N/A', message });

// 46082 is 2026-03-01.
const when = column(46082, 46083, 46084);
const copper = column(2.1, 2.2, 2.15);
const days = (...args: readonly ArgumentIn[]): Answer => call('HOLDDAYS', ...args);

/** So many daily readings, but for one row. */
const rows = (count: number, at: number, cell: ArgumentIn): [number[][], ArgumentIn] => [
  Array.from({ length: count }, (_, i) => [46082 + i]),
  Array.from({ length: count }, (_, i) => [i + 1 === at ? (cell as number) : 2.1]),
];

describe('what the contract says word for word', () => {
  it('of a reading that is none', () => {
    const message = 'row 12: "purple" is not a reading; write 2.05, "2.05 ppm" or "<0.05", or leave it empty';
    expect(days(...rows(20, 12, 'purple'), 'chelated')).toEqual(refused(message));
    expect(call('HOLDROWS', ...rows(20, 12, 'purple'), 'chelated')).toEqual(refused(message));
  });

  it('of a reading in another unit', () => {
    const message = 'row 12: 2250 is more than 20 mg/L; if it is ug/L write "2250 ug/L"';
    expect(days(...rows(20, 12, 2250), 'chelated')).toEqual(refused(message));
    expect(days(...rows(20, 12, '2250 ug/L'), 'chelated')).toBe(19);
  });

  it('of ranges that do not match', () => {
    const [sixty] = rows(60, 0, null);
    const [, fiftyNine] = rows(59, 0, null);
    expect(days(sixty, fiftyNine, 'chelated')).toEqual(
      refused('when has 60 cells, copper 59; give ranges of the same rows'),
    );
  });

  it('of a hold that does not run', () => {
    const times = Array.from({ length: 30 }, (_, i) => [46055 + i]);
    const levels = times.map(() => [2.1]);
    const args = [[...times, [46085 + 8 / 24]], [...levels, [1.8]], 'chelated'];
    const message = 'no hold is running: the last reading, 1.8 on 2026-03-04 08:00 (row 31), is below 1.95';
    expect(call('HOLDSTART', ...args)).toEqual(notYet(message));
    expect(call('HOLDENDS', ...args)).toEqual(notYet(message));
    expect(days(...args)).toBe(0);
  });

  it('of a bare zero that may be an untested day', () => {
    expect(days(column(46082, 46083, 46084), column(2.1, 0, 2.2), 'chelated')).toEqual(
      notYet('row 2 reads 0; if that is real write "0 mg/L", if it is an untested day write "none"'),
    );
    expect(days(column(46082, 46083, 46084), column(2.1, '0 mg/L', 2.2), 'chelated')).toBe(0);
    expect(days(column(46082, 46083, 46084), column(2.1, 'none', 2.2), 'chelated')).toBe(2);
    expect(days(column(46082, 46083, 46084, null), column(2.1, 0, 2.2, null), 'chelated')).toBe(0);
    expect(days(column(46082, 46083, 46084), column(0, 2.1, 2.2), 'chelated')).toBe(1);
  });
});

describe('BAND', () => {
  it('gives two cells side by side', () => {
    expect(call('BAND', 'sulphate')).toEqual([[0.18, 0.21]]);
    expect(call('BAND', 'Amine Copper')).toEqual([[0.45, 0.55]]);
    expect(call('BAND', ' CHELATED ')).toEqual([[1.95, 2.55]]);
  });

  it('refuses the words that would be a guess', () => {
    for (const word of ['ionic', 'Copper', 'ionic copper']) {
      expect(call('BAND', word)).toEqual(
        refused(
          `form "${word}" is unclear; write "sulfate" (free copper, 0.18–0.21) or "amine" (complexed, 0.45–0.55)`,
        ),
      );
    }
    expect(call('BAND', 2)).toEqual(refused('form 2 is not a form of copper; write "sulfate", "amine" or "chelated"'));
  });
});

describe('when and copper', () => {
  it('are columns or rows', () => {
    expect(days(when, copper, 'chelated')).toBe(2);
    expect(days(row(46082, 46083, 46084), row(2.1, 2.2, 2.15), 'chelated')).toBe(2);
    expect(days(row(46082, 46083, 46084), copper, 'chelated')).toBe(2);
    expect(days([[46082, 2.1, 1]], copper.slice(0, 1), 'chelated')).toMatchObject({ error: '#VALUE!' });
    expect(
      days(
        when,
        [
          [2.1, 2.2],
          [1, 2],
          [3, 4],
        ],
        'chelated',
      ),
    ).toEqual(refused('copper has 3 rows and 2 columns; give one column or one row'));
  });

  it('may be one cell, bare or in brackets', () => {
    expect(days(46082, 2.1, 'chelated')).toBe(0);
    expect(call('HOLDSTART', 46082, 2.1, 'chelated')).toBe(46082);
    expect(call('HOLDSTART', [[46082]], [[2.1]], [['chelated']])).toBe(46082);
  });

  it('may be empty, and then there is no reading yet', () => {
    const message = 'copper has no reading yet, or none up to as of; test, then write the reading beside its time';
    for (const blank of [null, '', column(null, null), column('', ' '), column(0, 0), [], [[]]]) {
      expect(days(blank, blank, 'chelated')).toEqual(notYet(message));
    }
    expect(days(column('When', null), column('Copper mg/L', null), 'chelated')).toEqual(notYet(message));
    expect(days(when, column('none', '-', 'void 2.1'), 'chelated')).toEqual(notYet(message));
  });

  it('leave a heading row out, but count it', () => {
    const headed = [['Date and time'], ...when];
    expect(days(headed, [['Cu ppm'], ...copper], 'chelated')).toBe(2);
    expect(days(headed, [['Cu ppm'], [2.1], ['oops'], [2.15]], 'chelated')).toEqual(
      refused('row 3: "oops" is not a reading; write 2.05, "2.05 ppm" or "<0.05", or leave it empty'),
    );
    expect(days([['Tank 2'], ...when], [['Cu ppm'], ...copper], 'chelated')).toMatchObject({
      error: '#VALUE!',
      message: expect.stringMatching(/^row 1: /) as string,
    });
  });

  it('may have the time of day in a second column', () => {
    const twoColumns = [
      ['Date', 'Time'],
      [46082, 1 / 3],
      ['2026-03-02', '9:30 PM'],
      [46084, '0900'],
      [46085, '16.00'],
      [46086, null],
    ];
    const levels = column('Cu', 2.1, 2.1, 2.1, 2.1, 2.1);
    const answer = call('HOLDROWS', twoColumns, levels, 'chelated') as unknown[][];
    const expected = [46082 + 8 / 24, 46083 + 21.5 / 24, 46084 + 9 / 24, 46085 + 16 / 24, 46086];
    answer.slice(1).forEach((cells, i) => expect(cells[0]).toBeCloseTo(expected[i] ?? 0, 9));
    expect(answer).toHaveLength(6);
    expect(days([['', '08:00']], 2.1, 'chelated')).toEqual(
      refused('row 1: "08:00" is a time without its date; write both, like "2026-03-01 08:00"'),
    );
  });

  it('may hold text, and stand in any order', () => {
    const answer = days(
      column('2026-03-03', '2026-03-01 00:00', '2026-03-02T00:00:00'),
      column('2,15 ppm', '2100 ug/L', '2.2ish'),
      'chelated',
    );
    expect(answer).toBe(2);
  });

  it('may be whole columns', () => {
    const whole = (cells: ArgumentIn) =>
      Array.from({ length: 1_048_576 }, (_, i) => (cells as unknown[][])[i] ?? [null]) as number[][];
    expect(days(whole([['When'], ...when]), whole([['Copper'], ...copper]), 'chelated')).toBe(2);
  });

  it('say of a reading without a time, and of a time without a date', () => {
    expect(days(column(46082, null), column(2.1, 2.2), 'chelated')).toEqual(
      refused('row 2: the reading 2.2 has no time; write its date and time, like "2026-03-01 08:00"'),
    );
    expect(days(column(46082, 0.5), column(2.1, 2.2), 'chelated')).toEqual(
      refused('row 2: 0.5 is a time without its date; write both, like "2026-03-01 08:00"'),
    );
    expect(days(column(46082, '2026-03-02 08:00Z'), column(2.1, 2.2), 'chelated')).toMatchObject({
      message: expect.stringContaining('names a time zone') as string,
    });
  });
});

describe('band', () => {
  it('is a form, a low limit, or two cells', () => {
    expect(days(when, copper, 'Chelated copper')).toBe(2);
    expect(days(when, copper, 2)).toBe(2);
    expect(days(when, copper, '2 ppm')).toBe(2);
    expect(days(when, copper, row(2, 2.5))).toBe(2);
    expect(days(when, copper, column(2, 2.5))).toBe(2);
    expect(days(when, copper, row('2.12', null))).toBe(1);
    expect(days(when, copper, row(2.1, 2.1))).toBe(2);
  });

  it('holds to 1e-9, so that a reading equal to a limit is inside', () => {
    expect(days(when, column(1.95, 1.95 - 5e-10, 1.95), 'chelated')).toBe(2);
    expect(days(when, column(1.95, 1.95 - 5e-9, 1.95), 'chelated')).toBe(0);
  });

  it('is refused upside down, in three cells, at or below 0, above 20, or blank', () => {
    expect(days(when, copper, row(2.5, 2))).toEqual(
      refused('band low 2.5 is above its high 2; write the low limit first'),
    );
    expect(days(when, copper, row(1, 2, 3))).toEqual(
      refused('band has 1 rows and 3 columns; give a form, one low limit, or two cells, low and high'),
    );
    for (const band of [0, -1, 20.5, row(2, 21), null, '', row(null, 2), 'purple', true]) {
      expect(days(when, copper, band)).toMatchObject({
        error: '#VALUE!',
        message: expect.stringMatching(/^band/) as string,
      });
    }
  });
});

describe('the optional arguments', () => {
  it('as of leaves later readings out and counts 36 h at most past the last', () => {
    expect(days(when, copper, 'chelated', 46083)).toBe(1);
    expect(days(when, copper, 'chelated', 46084.5)).toBe(2.5);
    expect(days(when, copper, 'chelated', 46090)).toBe(3.5);
    expect(days(when, copper, 'chelated', '2026-03-03 12:00')).toBe(2.5);
    expect(days(when, copper, 'chelated', 46090, null, 24)).toBe(3);
    expect(days(when, copper, 'chelated', 46081)).toMatchObject({ error: '#N/A' });
    expect(call('HOLDSTART', when, copper, 'chelated', 46083)).toBe(46082);
    expect(call('HOLDROWS', when, copper, 'chelated', 46083)).toHaveLength(3);
  });

  it('arrived replaces an earlier start', () => {
    expect(days(when, copper, 'chelated', null, 46083)).toBe(1);
    expect(days(when, copper, 'chelated', null, 46080)).toBe(2);
    expect(days(when, copper, 'chelated', null, 46090)).toBe(0);
    expect(call('HOLDSTART', when, copper, 'chelated', null, 46082.5)).toBe(46082.5);
    expect(call('HOLDENDS', when, copper, 'chelated', 14, 46083)).toBe(46097);
    expect(call('HOLDS', when, column(2.1, 1.8, 1.8), 'chelated', null, 46082.5)).toEqual([
      ['From', 'To', 'Days', 'Enough', 'Ended by', 'Row'],
      ['none', '', '', '', '', ''],
    ]);
  });

  it('longest gap starts the hold anew, "none" never', () => {
    const rare = column(46082, 46086, 46090.5);
    expect(days(rare, copper, 'chelated')).toBe(0);
    expect(days(rare, copper, 'chelated', null, null, 108)).toBe(8.5);
    expect(days(rare, copper, 'chelated', null, null, '4.5 days')).toBe(8.5);
    expect(days(rare, copper, 'chelated', null, null, 'None')).toBe(8.5);
    expect(days(rare, copper, 'chelated', null, null, -1)).toMatchObject({
      message: expect.stringMatching(/^longest gap -1 /) as string,
    });
  });

  it('confirm asks for a second reading', () => {
    expect(days(when, copper, 'chelated', null, null, null, 2)).toBe(1);
    expect(call('HOLDSTART', 46082, 2.1, 'chelated', null, null, null, 2)).toEqual(
      notYet(
        'no hold is running: the last reading, 2.1 on 2026-03-01 00:00 (row 1), needs a second one at or above 1.95',
      ),
    );
    expect(days(when, copper, 'chelated', null, null, null, 3)).toMatchObject({
      message: expect.stringMatching(/^confirm 3 /) as string,
    });
  });

  it('days is 30 where left out', () => {
    expect(call('HOLDENDS', when, copper, 'chelated')).toBe(46112);
    expect(call('HOLDENDS', when, copper, 'chelated', '14 days')).toBe(46096);
    expect(call('HOLDENDS', when, copper, 'chelated', '48 h')).toBe(46084);
    expect(call('HOLDENDS', when, copper, 'chelated', -1)).toMatchObject({
      message: expect.stringMatching(/^days -1 /) as string,
    });
  });

  it('come first where several arguments are at fault', () => {
    expect(days(when, column('purple', 2, 2), 'chelated', 'soon')).toMatchObject({
      message: expect.stringMatching(/^as of "soon"/) as string,
    });
    expect(days(when, column('purple', 2), 'ionic')).toMatchObject({
      message: expect.stringMatching(/^band "ionic"/) as string,
    });
  });
});

describe('HOLDROWS', () => {
  /** The columns of the first release; new ones come last. */
  const rowsOf = (when: ArgumentIn, copper: ArgumentIn): unknown =>
    (call('HOLDROWS', when, copper, 'chelated') as unknown[][]).map((row) => row.slice(0, 7));

  it('notes what is to be said of a reading', () => {
    const times = column(46082, 46083, 46085.5, 46086, 46087, 46087.5);
    const levels = column('~2.1', '>5', 1.96, '2.0-2.6', '<1', 2.1);
    expect(rowsOf(times, levels)).toEqual([
      ['When', 'Copper', 'Status', 'Hold day', 'Days done', 'Row', 'Note'],
      [46082, 2.1, 'in band', 1, 0, 1, 'approximate; hold starts'],
      [46083, 5, 'above', 2, 1, 2, 'top unknown'],
      [46085.5, 1.96, 'in band', 4, 3.5, 3, 'inside only by the allowance; tested after 60.0 h'],
      [46086, 2, 'above', 5, 4, 4, ''],
      [46087, 1, 'below', '', '', 5, 'hold broken after 4.0 days'],
      [46087.5, 2.1, 'in band', 1, 0, 6, 'hold starts'],
    ]);
  });

  it('says none where nothing was tested, and asks for less where the host would drop the table', () => {
    expect(rowsOf(null, null)).toEqual([
      ['When', 'Copper', 'Status', 'Hold day', 'Days done', 'Row', 'Note'],
      ['none', '', '', '', '', '', ''],
    ]);
    const many = Array.from({ length: 100_000 }, (_, i) => [40000 + i / 24]);
    expect(
      call(
        'HOLDROWS',
        many,
        many.map(() => [2.1]),
        'chelated',
      ),
    ).toEqual(refused('the table of 100000 rows is over 2 MB; give a shorter range'));
  });
});

describe('HOLDS', () => {
  it('lists every hold and what ended it', () => {
    const times = column(46082, 46084, 46085, 46086, 46091, 46092);
    const levels = column(2.1, 2.1, 1.8, 2.1, 2.2, 2.1);
    expect(call('HOLDS', times, levels, 'chelated', 2)).toEqual([
      ['From', 'To', 'Days', 'Enough', 'Ended by', 'Row'],
      [46082, 46084, 2, 'yes', 'below', 3],
      [46086, 46086, 0, 'no', 'untested 120.0 h', 5],
      [46091, 46092, 1, 'running', 'still running', ''],
    ]);
  });

  it('says yes of a running hold that is long enough', () => {
    expect((call('HOLDS', when, copper, 'chelated', 2) as unknown[][])[1]?.[3]).toBe('yes');
  });
});
