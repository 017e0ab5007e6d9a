import { cellRange } from '../../../src/sheet/address/cellRange';
import { evaluatedBook } from '../../../src/sheet/recalc/evaluatedBook';
import type { BookTable } from '../../../src/sheet/book/book';
import { addressIn, answersOf, outside, error, formulaGives, shown, testBook, type TestCell } from './testBook';

/** A log of readings from 2026-03-01 08:00 on, a day apart, headings in row 1. */
const levels = [2.1, 2.2, 2.15, 2.05, 2.0];
const log: Readonly<Record<string, TestCell>> = {
  A1: 'When',
  B1: 'Copper',
  ...Object.fromEntries(
    levels.flatMap((level, i) => [
      [`A${i + 2}`, 46_082 + 8 / 24 + i],
      [`B${i + 2}`, level],
    ]),
  ),
};

describe('evaluatedBook', () => {
  it('works out our formulas, typed or stored, and no others', async () => {
    const book = testBook({
      Log: {
        ...log,
        D1: { formula: '_xldudf_QT_HOLDDAYS(A2:A6,B2:B6,"chelated")', value: 99 },
        D2: { formula: 'qt.holddays(A2:A6,B2:B6,"chelated")' },
        D3: { formula: 'SUM(B2:B6)', value: 1 },
        D4: { formula: 'IFERROR(QT.HOLDDAYS(A:A,B:B,"chelated"),"none")&" days"', value: '' },
      },
    });
    expect(await answersOf(book)).toEqual({ 'Log!D1': 4, 'Log!D2': 4, 'Log!D4': '4 days' });
  });

  it('takes a formula that calls one of ours through a name for ours', async () => {
    const names = [
      { name: 'Days', formula: '_xldudf_QT_HOLDDAYS(Log!$A$2:$A$6,Log!$B$2:$B$6,"chelated")' },
      { name: 'Left', formula: '30-Days' },
      { name: 'HeldIn', formula: 'LAMBDA(when,_xldudf_QT_HOLDDAYS(when,Log!$B$2:$B$6,"chelated"))' },
      { name: 'Levels', formula: 'Log!$B$2:$B$6' },
    ];
    const cells = {
      D1: { formula: 'Days', value: 99 },
      D2: { formula: 'Left', value: 99 },
      D3: { formula: 'HeldIn(A2:A6)', value: 99 },
      D4: { formula: 'SUM(Levels)', value: 99 },
      D5: { formula: '"Days"', value: 99 },
    };
    const book = testBook({ Log: { ...log, ...cells } }, { names });
    expect(await answersOf(book)).toEqual({ 'Log!D1': 4, 'Log!D2': 26, 'Log!D3': 4 });
  });

  it('needs nothing of a book without them', async () => {
    expect(await evaluatedBook(testBook({ Log: { A1: { formula: '1+1' } } }), outside, { now: 1 })).toEqual([]);
  });

  it('hands blanks, texts, numbers and errors on as they are', async () => {
    const cells = { ...log, B4: '2.15 ppm', B5: '123', C1: error('#DIV/0!') };
    expect(await formulaGives('QT.MGPERL(B4)', cells)).toBe(2.15);
    expect(await formulaGives('QT.MGPERL(B9)', cells)).toBe('');
    expect(await formulaGives('QT.MGPERL(C1)', cells)).toBe('#VALUE!');
    expect(await formulaGives('QT.HOLDDAYS(A2:A6,B2:B6,"chelated")', cells)).toBe('#VALUE!');
    expect(await formulaGives('QT.HOLDDAYS(A2:A6,B2:B6,1.95,,,,1)', log)).toBe(4);
  });

  it('gives the sentence of a refusal', async () => {
    const book = testBook({ Log: { ...log, D1: { formula: 'QT.HOLDDAYS(A2:A6,B2:B5,"chelated")' } } });
    const [answer] = await evaluatedBook(book, outside, { now: 46_100 });
    expect(answer?.value).toEqual(error('#VALUE!'));
    expect(answer?.reason).toMatch(/^when has 5 cells, copper 4/);
  });

  it('points at the error cell behind an error', async () => {
    const book = testBook({
      Log: {
        ...log,
        C1: error('#DIV/0!'),
        D1: { formula: 'QT.MGPERL(B2)+C1' },
        D2: { formula: 'QT.MGPERL(B2)+Other!A1' },
      },
      Other: { A1: error('#NUM!') },
    });
    const answers = await evaluatedBook(book, outside, { now: 46_100 });
    expect(answers.map(({ reason }) => reason)).toEqual([
      'C1, which the formula reads, is #DIV/0!',
      'Other!A1, which the formula reads, is #NUM!',
    ]);
  });

  it('gives no sentence for a refusal that the formula took care of', async () => {
    const book = testBook({ Log: { ...log, D1: { formula: 'IFERROR(QT.HOLDDAYS(A2:A6,B2:B5,"chelated"),"?")' } } });
    const [answer] = await evaluatedBook(book, outside, { now: 46_100 });
    expect(answer).toMatchObject({ value: '?' });
    expect(answer?.reason).toBeUndefined();
  });

  it.each<[string, unknown]>([
    ['INDEX(QT.HOLDS(A2:A6,B2:B6,"chelated"),0,3)', [['Days'], [4]]],
    ['SUM(INDEX(QT.HOLDS(A2:A6,B2:B6,"chelated"),0,3))', 4],
    ['LET(d,QT.HOLDDAYS(A2:A6,B2:B6,"chelated"),IF(ISNUMBER(d),d*24,"none"))', 96],
    ['IF(ISNUMBER(QT.HOLDDAYS(A2:A6,B2:B6,"chelated")),"held","no")', 'held'],
    ['TEXT(QT.HOLDSTART(A2:A6,B2:B6,"chelated"),"yyyy-mm-dd")', '2026-03-01'],
    ['CHOOSE(2,"x",QT.BAND("amine"))', [[0.45, 0.55]]],
    ['QT.HOLDDAYS(A2:A6,B2:B6,QT.BAND("chelated"))', 4],
    ['QT.HOLDDAYS(A:A,B:B,"chelated")', 4],
    ['QT.HOLDDAYS(Log!A:A,Log!B:B,"chelated",NOW())', 5.5],
    ['QT.HOLDDAYS(A2:A6,B2:B6,"chelated",OFFSET(A2,1,0))', 1],
    ['-QT.MGPERL(B2)%', -0.021],
    ['QT.MGPERL("2.05 ppm")=2.05', true],
    ['MAP(B2:B3,LAMBDA(x,QT.MGPERL(x)*2))', [[4.2], [4.4]]],
    ['SUMPRODUCT((B2:B6>2.05)*B2:B6)', 6.45],
    ['QT.BAND("chelated")', [[1.95, 2.55]]],
    ['@QT.BAND("chelated")', 1.95],
  ])('works out %s', async (formula, expected) => {
    const gives = await formulaGives(formula, log);
    expect(
      typeof expected === 'number' && typeof gives === 'number' ? Math.abs(gives - expected) < 1e-9 : gives,
    ).toEqual(typeof expected === 'number' && typeof gives === 'number' ? true : expected);
  });

  it('reads names and parts of tables', async () => {
    const table: BookTable = {
      name: 'Readings',
      sheet: 'Log',
      range: cellRange('A1:B6'),
      columns: ['When', 'Copper'],
      headings: true,
      totals: false,
    };
    const book = testBook(
      {
        Log: { ...log, D3: { formula: '_xldudf_QT_MGPERL(Readings[[#This Row],[Copper]])' } },
        Card: {
          A1: { formula: 'QT.HOLDDAYS(Readings[When],Readings[Copper],form)' },
          A2: { formula: 'QT.HOLDDAYS(Readings[When],levels,form,asOf)' },
          B1: 46_083 + 8 / 24,
        },
      },
      {
        tables: [table],
        names: [
          { name: 'form', formula: '"chelated"' },
          { name: 'levels', formula: 'OFFSET(Log!$B$1,1,0,COUNT(Log!$B:$B),1)' },
          { name: 'asOf', formula: 'Card!B1048576' },
        ],
      },
    );
    expect(await answersOf(book)).toEqual({ 'Log!D3': 2.2, 'Card!A1': 4, 'Card!A2': 1 });
  });

  describe('formulas of others', () => {
    it('count by their stored values where they read none of ours', async () => {
      const book = testBook({
        Log: {
          A1: { formula: '1+1', value: 7 },
          B1: { formula: 'A1*2', value: 100 },
          C1: { formula: 'QT.MGPERL(B1%)' },
        },
      });
      expect(await answersOf(book)).toEqual({ 'Log!C1': 1 });
    });

    it('are worked out on the way where they read one of ours', async () => {
      const book = testBook({
        Log: {
          ...log,
          D1: { formula: 'QT.MGPERL(B2)', value: 0 },
          D2: { formula: 'D1*10', value: 0 },
          D3: { formula: 'D2+1', value: 0 },
          D4: { formula: 'QT.MGPERL(D3/100)', value: 0 },
        },
      });
      expect(await answersOf(book)).toEqual({ 'Log!D1': 2.1, 'Log!D4': 0.22 });
      expect(await answersOf(book, { all: true })).toEqual({
        'Log!D1': 2.1,
        'Log!D2': 21,
        'Log!D3': 22,
        'Log!D4': 0.22,
      });
    });

    it('are worked out where they read a cell that one of ours fills', async () => {
      const book = testBook({
        Log: {
          A1: { formula: 'QT.BAND("chelated")', value: 0, fills: 'A1:B1', dynamic: true },
          B1: 0,
          C1: { formula: 'B1*2', value: 0 },
          D1: { formula: 'QT.MGPERL(C1)' },
        },
      });
      expect(await answersOf(book)).toEqual({ 'Log!A1': 1.95, 'Log!B1': 2.55, 'Log!D1': 5.1 });
    });

    it('keep their stored values where nobody can follow them', async () => {
      const doubtful = (value: TestCell): Promise<Record<string, unknown>> =>
        answersOf(testBook({ Log: { A1: value, B1: { formula: 'QT.MGPERL(A1)' }, C1: 3, D1: 4 } }));
      expect(await doubtful({ formula: 'OFFSET(C1,0,1)', value: 1 })).toEqual({ 'Log!B1': 4 });
      expect(await doubtful({ formula: 'INDIRECT("nowhere!A1")', value: 1 })).toEqual({ 'Log!B1': 1 });
      expect(await doubtful({ formula: 'FOO(B1)', value: 1 })).toEqual({ 'Log!B1': 1 });
    });

    it('do not stand in the way of a formula that stops before them', async () => {
      const book = testBook({
        Log: {
          A1: { formula: 'IF(TRUE,QT.MGPERL(2),B1)' },
          B1: { formula: 'A1+1', value: 0 },
          C1: { formula: 'QT.MGPERL(B1)' },
        },
      });
      expect(await answersOf(book)).toEqual({ 'Log!A1': 2, 'Log!C1': 3 });
    });
  });

  describe('a formula in one cell', () => {
    it('takes the first cell of an answer', async () => {
      expect(await answersOf(testBook({ Log: { A1: { formula: 'QT.BAND("chelated")' } } }))).toEqual({
        'Log!A1': 1.95,
      });
    });

    it('takes of a range the cell of its row', async () => {
      const book = testBook({
        Log: { ...log, D3: { formula: 'B2:B6+QT.MGPERL(1)' }, D9: { formula: 'B2:B6+QT.MGPERL(1)' } },
      });
      expect(await answersOf(book)).toEqual({ 'Log!D3': 3.2, 'Log!D9': '#VALUE!' });
    });
  });

  describe('an array formula of old', () => {
    const filled = (fills: string, formula = 'QT.BAND("chelated")'): Promise<Record<string, unknown>> =>
      answersOf(testBook({ Log: { A1: { formula, fills }, B1: 'typed' } }));

    it('fills its cells, no more and no fewer', async () => {
      expect(await filled('A1:B1')).toEqual({ 'Log!A1': 1.95, 'Log!B1': 2.55 });
      expect(await filled('A1:A1')).toEqual({ 'Log!A1': 1.95 });
      expect(await filled('A1:C1')).toEqual({ 'Log!A1': 1.95, 'Log!B1': 2.55, 'Log!C1': '#N/A' });
      expect(await filled('A1:B2')).toEqual({ 'Log!A1': 1.95, 'Log!B1': 2.55, 'Log!A2': 1.95, 'Log!B2': 2.55 });
    });

    it('shows an error or one value in all of them', async () => {
      expect(await filled('A1:B1', 'QT.BAND("ionic")')).toEqual({ 'Log!A1': '#VALUE!', 'Log!B1': '#VALUE!' });
      expect(await filled('A1:B1', 'QT.MGPERL(2)')).toEqual({ 'Log!A1': 2, 'Log!B1': 2 });
    });
  });

  describe('an array formula that grows', () => {
    const holds = 'QT.HOLDROWS(A2:A6,B2:B6,"chelated")';
    const spill = (fills: string): TestCell => ({ formula: holds, fills, dynamic: true });

    it('spreads over empty cells and over those it filled before', async () => {
      const book = testBook({ Log: { ...log, D1: spill('D1:E2'), E1: 'old', D2: 'old', E2: 'old' } });
      const answers = await evaluatedBook(book, outside, { now: 46_100 });
      expect(answers[0]?.fills).toEqual(cellRange('D1:J6'));
      expect(answers).toHaveLength(42);
      expect(answers.find((answer) => addressIn(answer) === 'Log!E2')?.value).toBe(2.1);
      expect(answers.find((answer) => addressIn(answer) === 'Log!E2')?.anchor).toEqual({ row: 0, column: 3 });
    });

    it('leaves the cells it needs no longer', async () => {
      const book = testBook({ Log: { ...log, D1: spill('D1:K7'), K7: 'old', D7: 'old' } });
      const answers = await evaluatedBook(book, outside, { now: 46_100 });
      expect(answers[0]?.fills).toEqual(cellRange('D1:J6'));
      const left = answers.filter(({ value, formula }) => value === null && formula === '');
      expect(left).toHaveLength(8 * 7 - 42);
    });

    it.each([
      [{ F3: 'typed' }, 'F3 is not empty'],
      [{ F3: { formula: '1+1', value: 2 } }, 'F3 is not empty'],
      [{ F3: '' }, 'F3 is not empty'],
    ])('says what is in its way', async (cells: Record<string, TestCell>, reason) => {
      const book = testBook({ Log: { ...log, ...cells, D1: spill('D1:E2') } });
      const answers = await evaluatedBook(book, outside, { now: 46_100 });
      expect(shown(answers[0]?.value ?? null)).toBe('#SPILL!');
      expect(answers[0]?.reason).toBe(`the answer fills D1:J6, and ${reason}; clear it or move the formula`);
      expect(answers.slice(1).map(addressIn)).toEqual(['Log!E1', 'Log!D2', 'Log!E2']);
    });

    it('does not spread over merged cells or into a table', async () => {
      const merged = testBook({ Log: { cells: { ...log, D1: spill('D1:D1') }, merged: ['E5:F5'] } });
      expect((await evaluatedBook(merged, outside, { now: 1 }))[0]?.reason).toContain('E5:F5 is merged');
      const table = {
        name: 'Notes',
        sheet: 'Log',
        range: cellRange('F2:G3'),
        columns: ['a', 'b'],
        headings: true,
        totals: false,
      };
      const inTable = testBook({ Log: { ...log, D1: spill('D1:D1') } }, { tables: [table] });
      expect((await evaluatedBook(inTable, outside, { now: 1 }))[0]?.reason).toContain('the table Notes is there');
    });

    it('has its new cells read by others, whatever the order', async () => {
      for (const at of ['C1', 'Z1']) {
        const book = testBook({
          Log: {
            ...log,
            D1: spill('D1:E2'),
            [at]: { formula: 'QT.MGPERL(SUM(E2:E6)%)' },
            X1: { formula: 'QT.MGPERL(COUNTA(D:D))' },
          },
        });
        const answers = await answersOf(book);
        expect(answers[`Log!${at}`]).toBeCloseTo(0.105, 12);
        expect(answers['Log!X1']).toBe(6);
      }
    });

    it('reaches formulas of others that did not read it before', async () => {
      const book = testBook({
        Log: {
          ...log,
          D1: spill('D1:E2'),
          X1: { formula: 'COUNTA(D5:D6)', value: 0 },
          Y1: { formula: 'QT.MGPERL(X1)' },
        },
      });
      expect((await answersOf(book))['Log!Y1']).toBe(2);
    });

    it.each([
      ['D3', 'B4'],
      ['D3', 'D4'],
    ])('moves into what another gives up, and that one does not empty it', async (shrinking, growing) => {
      const book = testBook({
        Log: log,
        Tables: {
          [shrinking]: { formula: 'QT.BAND("chelated")', fills: 'D3:E8', dynamic: true },
          E3: 0,
          D8: 'old',
          [growing]: { formula: holds.replace(/[AB]\d/g, 'Log!$&'), fills: `${growing}:${growing}`, dynamic: true },
        },
      });
      const answers = await answersOf(book);
      expect(answers).toMatchObject({ 'Tables!D3': 1.95, 'Tables!E3': 2.55, [`Tables!${growing}`]: 'When' });
      expect(answers[growing === 'B4' ? 'Tables!C5' : 'Tables!E5']).toBe(2.1);
      expect(answers['Tables!D8']).not.toBeNull();
    });

    it('does not spread over another that stays', async () => {
      const book = testBook({
        Log: {
          ...log,
          D1: spill('D1:D1'),
          F4: { formula: 'QT.BAND("amine")', fills: 'F4:G4', dynamic: true },
          X1: { formula: 'TRANSPOSE(A1:A2)', value: 1, fills: 'X1:Y1', dynamic: true },
          Y1: 2,
          W1: { formula: 'QT.BAND("amine")', fills: 'W1:W1', dynamic: true },
        },
      });
      const answers = await answersOf(book);
      expect(answers).toMatchObject({ 'Log!D1': '#SPILL!', 'Log!F4': 0.45, 'Log!G4': 0.55, 'Log!W1': '#SPILL!' });
    });

    it('is the range that # means', async () => {
      const book = testBook({
        Log: {
          ...log,
          D1: spill('D1:E2'),
          Y1: { formula: 'QT.MGPERL(ROWS(D1#))' },
          Y2: { formula: '_xldudf_QT_MGPERL(ROWS(_xlfn.ANCHORARRAY(D1)))' },
          Y3: { formula: 'IF(QT.MGPERL(1)=1,ROWS(B2#))' },
        },
      });
      const answers = await answersOf(book);
      expect([answers['Log!Y1'], answers['Log!Y2'], answers['Log!Y3']]).toEqual([6, 6, '#REF!']);
    });
  });

  describe('circles', () => {
    it('end, with the reason', async () => {
      const book = testBook({
        Log: {
          A1: { formula: 'QT.MGPERL(B1)', value: 1 },
          B1: { formula: 'A1+1', value: 2 },
          C1: { formula: 'QT.MGPERL(C1)', value: 3 },
          D1: { formula: 'QT.MGPERL(SUM(D:D))', value: 4 },
          E1: { formula: 'IFERROR(QT.MGPERL(A1),0)' },
        },
      });
      const answers = await evaluatedBook(book, outside, { now: 46_100 });
      expect(answers.map(({ value }) => shown(value))).toEqual(['#REF!', '#REF!', '#REF!', 0]);
      expect(answers[0]?.reason).toBe('the formula reads its own cell, or cells that depend on it; break the loop');
    });

    it('end where a table chases its own end', async () => {
      const book = testBook({
        Log: { A1: { formula: 'QT.HOLDROWS(Z1:Z2,SEQUENCE(COUNTA(A2:A900)),2)', fills: 'A1:A1', dynamic: true } },
      });
      expect((await evaluatedBook(book, outside, { now: 46_100 })).length).toBeGreaterThan(0);
    });
  });

  it('follows a chain of 10,000 cells', async () => {
    const chain = Object.fromEntries(
      Array.from({ length: 10_000 }, (_, i): [string, TestCell] => [
        `B${i + 1}`,
        { formula: `${i === 0 ? 'A1' : `B${i}`}+1`, value: 0 },
      ]),
    );
    const book = testBook({
      Log: { ...chain, A1: { formula: 'QT.MGPERL(2)' }, C1: { formula: 'QT.MGPERL(B10000%%)' } },
    });
    expect(await answersOf(book)).toEqual({ 'Log!A1': 2, 'Log!C1': 1.0002 });
  });

  it('keeps what cannot be worked out here and says why', async () => {
    const book = testBook({
      Log: {
        A1: { formula: 'QT.MGPERL(FOO(1))', value: 5 },
        B1: { formula: 'QT.MGPERL(A1)' },
        C1: { formula: 'QT.BAND(' },
      },
    });
    const answers = await evaluatedBook(book, outside, { now: 46_100 });
    expect(answers.map(({ value, isKept, reason }) => [value, isKept, reason])).toEqual([
      [5, true, 'the formula calls FOO, which is not supported here'],
      [5, undefined, undefined],
      [null, true, 'the formula lacks a value at its end'],
    ]);
  });

  it('marks the moments among the answers', async () => {
    const book = testBook({
      Log: {
        ...log,
        D1: { formula: 'QT.HOLDSTART(A2:A6,B2:B6,"chelated")' },
        D2: { formula: 'QT.HOLDDAYS(A2:A6,B2:B6,"chelated")' },
        E1: { formula: 'QT.HOLDS(A2:A6,B2:B6,"chelated")', fills: 'E1:E1', dynamic: true },
      },
    });
    const answers = await evaluatedBook(book, outside, { now: 46_100 });
    expect(answers.filter(({ isTime }) => isTime === true).map(addressIn)).toEqual(['Log!D1', 'Log!E2', 'Log!F2']);
  });
});
