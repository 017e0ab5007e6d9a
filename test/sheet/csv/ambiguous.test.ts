import { csvBook, csvRefusal, csvValues } from './csvBook.js';

const march = (day: number, hour = 0): number => 46081 + day + hour / 24;

describe('what parts the fields of a csv file', () => {
  it.each([
    ['commas', 'Date,Copper,Note\n2026-03-01,2.05,"ate; slept"\n2026-03-02,2.1,x\n', [march(1), 2.05, 'ate; slept']],
    ['semicolons', 'Date;Copper;Note\n2026-03-01;2,05;ate, slept\n2026-03-02;2,1;x\n', [march(1), 2.05, 'ate, slept']],
    ['semicolons', 'Date;Copper, mg/L\n2026-03-01;2,05\n2026-03-02;2,10\n', [march(1), 2.05]],
    ['semicolons', 'Date;Copper\n2026-03-01;2,05\n2026-03-02;2,10;moved; then fed\n2026-03-03;2,1\n', [march(1), 2.05]],
    [
      'tabs',
      'Date\tCopper\tNote\n2026-03-01\t2,05\tate, well; all\n2026-03-02\t2,1\tx\n',
      [march(1), 2.05, 'ate, well; all'],
    ],
    ['upright bars', 'Date|Copper\n2026-03-01|2.05\n', [march(1), 2.05]],
  ])('finds %s', (name, text, second) => {
    expect(csvBook(text).remarks[0]).toContain(`fields separated by ${name}`);
    expect(csvValues(text)[1]).toEqual(second);
  });

  it('sees through titles, card lines and rows of several lengths', () => {
    const text =
      'Hospital tank; 2026\n\nVolume;200 L\nForm;chelated\n\nDate;Copper;Dose\n2026-03-01;2,05\n2026-03-02;2,1;15\n';
    expect(csvValues(text)[6]).toEqual([march(1), 2.05]);
  });

  it('refuses two that fit equally well, naming both', () => {
    expect(csvRefusal('a,b;c\nd,e;f\n')).toBe(
      'The fields may be separated by commas or by semicolons, both cut the rows alike; write sep=, or sep=; into a line above the first, or say which it is',
    );
    expect(csvValues('a,b;c\nd,e;f\n', { delimiter: ';' })).toEqual([
      ['a,b', 'c'],
      ['d,e', 'f'],
    ]);
    expect(csvValues('a,b\tc\nd,e\tf\n', {}, 'x.tsv')).toEqual([
      ['a,b', 'c'],
      ['d,e', 'f'],
    ]);
  });
});

describe('numbers with a unit in a csv file', () => {
  it('are read by the decimal mark of the file', () => {
    const text =
      'Volume;1.234 L\nHeight;1.234,5 mm\n\nDate;Copper;Dose\n2026-03-01;2,05;1.250 mL\n2026-03-02;>2,5 ppm;x\n';
    expect(csvValues(text)).toEqual([
      ['Volume', '1234 L'],
      ['Height', '1234.5 mm'],
      [],
      ['Date', 'Copper', 'Dose'],
      [march(1), 2.05, '1250 mL'],
      [march(2), '>2,5 ppm', 'x'],
    ]);
    expect(csvBook(text).remarks[0]).toContain('"1.234" in row 1 read as 1234');
    expect(csvValues('Volume,"1,234 L"\nDate,Copper\n2026-03-01,2.051 ppm\n2026-03-02,2.1')[0]).toEqual([
      'Volume',
      '1234 L',
    ]);
  });

  it('tell of the decimal mark themselves, and are refused where nothing does', () => {
    expect(csvValues('Copper;Dose\n2,05 ppm;1.250\n')[1]).toEqual(['2,05 ppm', 1250]);
    expect(csvRefusal('Volume;1.234 L\nDate;Copper\n2026-03-01;2\n')).toContain(
      'In row 1, column B "1.234" may be 1.234 or 1234',
    );
    expect(csvValues('Volume;1.234 L\nDate;Copper\n2026-03-01;2\n', { decimal: 'point' })[0]).toEqual([
      'Volume',
      '1.234 L',
    ]);
    expect(csvRefusal('Copper;Note\n>2.500;x\n')).toContain('"2.500" may be 2.5 or 2500');
  });

  it('give way to plain numbers, and are refused where they contradict each other', () => {
    const plain = 'Copper;Dose\n"2,05";"1,250"\n<0.05;"1,264 mL"\n';
    expect(csvValues(plain).slice(1)).toEqual([
      [2.05, 1.25],
      ['<0.05', '1.264 mL'],
    ]);
    expect(csvRefusal('Copper;Dose\n2,05 ppm;1,250 mL\n<0.05;x\n')).toContain('"1,250" may be 1.25 or 1250');
  });

  it('keep three decimals behind a comma, which a cell alone may not have', () => {
    expect(csvValues('Date;Copper\n2026-03-01;0,195 ppm\n2026-03-02;<0,050 mg/L\n').map((row) => row[1])).toEqual([
      'Copper',
      '0.195 ppm',
      '<0.05 mg/L',
    ]);
  });

  it('are no hours', () => {
    const text = 'Date;Time;Seen;Copper\n2026-03-01;8.30;8.30 Uhr;2,05\n';
    expect(csvValues(text)[1]).toEqual([march(1), '8.30', '8.30 Uhr', 2.05]);
    expect(csvBook(text).remarks[0]).toContain('decimal commas ("2,05" in row 2)');
  });
});

describe('what stands before the decimals of a csv file', () => {
  it('refuses decimals that fell off an unquoted number and fill the next column', () => {
    const torn = 'Date,Copper,Dose\n2026-03-01,2,05\n2026-03-02,2,1\n';
    expect(csvRefusal(torn)).toContain('In row 2 a 05 stands behind a 2, so 2,05 may be one number or two');
    expect(csvRefusal(torn, { decimal: 'point' })).toBe('');
    expect(csvRefusal('Date,Copper,Lot\n2026-03-01,2.1,7\n2026-03-02,2,05\n')).toBe('');
  });

  it('tells where both marks are there', () => {
    expect(csvBook('Date;Copper\n2026-03-01;2,05\n2026-03-02;2.10\n').remarks[0]).toContain(
      'decimal points ("2.10" in row 3) and decimal commas ("2,05" in row 2)',
    );
  });

  const column = (...values: string[]): string =>
    `Date;Dose mL\n${values.map((value) => `2026-03-01;${value}`).join('\n')}\n`;
  const read = (text: string, decimal?: 'point' | 'comma') =>
    csvValues(text, decimal === undefined ? {} : { decimal })
      .slice(1)
      .map(([, value]) => value);

  it.each([
    [
      ['2,05', '1,234'],
      [2.05, 1.234],
    ],
    [
      ['2.05', '1,234'],
      [2.05, 1234],
    ],
    [
      ['2,05', '1.234'],
      [2.05, 1234],
    ],
    [
      ['2.05', '1.234'],
      [2.05, 1.234],
    ],
    [
      ['1.234,5', '1.234'],
      [1234.5, 1234],
    ],
    [
      ['1,234.5', '1.234'],
      [1234.5, 1.234],
    ],
    [
      ['1,234,567', '1,234'],
      [1234567, 1234],
    ],
    [
      ['1.234.567', '1,234'],
      [1234567, 1.234],
    ],
    [
      ['0,125', '1,234'],
      [0.125, 1.234],
    ],
    [
      ['1\u00a0234,5', '1\u202f234', "1'234"],
      [1234.5, 1234, 1234],
    ],
    [
      ['-1.234,5', '+2,5'],
      [-1234.5, 2.5],
    ],
    [
      ['2,05', '2.10'],
      [2.05, 2.1],
    ],
  ])('%j is read as %j', (texts, values) => {
    expect(read(column(...texts))).toEqual(values);
  });

  it('takes the file where a column does not say, and tells what was read', () => {
    const text = 'Date;Copper;Dose\n2026-03-01;2,05;1.234\n';
    expect(csvValues(text)[1]).toEqual([march(1), 2.05, 1234]);
    expect(csvBook(text).remarks[0]).toBe(
      'Read as UTF-8: fields separated by semicolons, decimal commas ("2,05" in row 2), "1.234" in row 2 read as 1234.',
    );
  });

  it('takes a point for a point where commas part the fields and nothing speaks against it', () => {
    expect(csvValues('Date,S.G.\n2026-03-01,1.024\n')[1]).toEqual([march(1), 1.024]);
  });

  it.each([
    ['a comma alone', column('1,234', '950')],
    ['a point alone', column('1.234', '950')],
    ['a quoted comma among commas', 'Date,Dose\n2026-03-01,"1,234"\n'],
    ['both in one column', column('1,234', '2,05', '2.10')],
    ['other columns that contradict', 'Date;Dose;Cu;Temp\n2026-03-01;1,234;2,05;25.5\n'],
  ])('refuses %s', (_, text) => {
    expect(csvRefusal(text)).toMatch(
      /^In row 2, column B "1[.,]234" may be 1\.234 or 1234, and nothing in the file says which; write it as 1\.2340 or 1234, or say whether decimals have a point or a comma$/,
    );
  });

  it('does as it is told', () => {
    expect(read(column('1,234', '950'), 'comma')).toEqual([1.234, 950]);
    expect(read(column('1,234', '950'), 'point')).toEqual([1234, 950]);
    expect(read(column('1.234'), 'comma')).toEqual([1234]);
  });

  it('refuses a number that its own comma has torn', () => {
    const text = 'Date,Copper,Note\n2026-03-01,2,05,fed\n2026-03-02,2,fed\n';
    expect(csvRefusal(text)).toBe(
      'Row 2 has 4 fields under 3 headings, and 2,05 in it may be one number or two; write "2,05" in quotes or 2.05, or say whether decimals have a point or a comma',
    );
    expect(csvRefusal(text, { decimal: 'point' })).toBe('');
    expect(csvRefusal('Volume,200\nForm,chelated\n\nDate,Copper,Dose\n2026-03-01,2,15\n')).toBe('');
  });
});

describe('dates of a csv file', () => {
  const column = (...values: string[]): string => `Date,Copper\n${values.map((value) => `"${value}",2`).join('\n')}\n`;
  const read = (...values: string[]) =>
    csvValues(column(...values))
      .slice(1)
      .map(([value]) => value);

  it.each([
    ['2026-03-01', march(1), 'yyyy-mm-dd'],
    ['2026-3-1 08:00', march(1, 8), 'yyyy-mm-dd hh:mm'],
    ['2026-03-01T20:00:00', march(1, 20), 'yyyy-mm-dd hh:mm'],
    ['2026/03/01', march(1), 'yyyy-mm-dd'],
    ['14/03/2026 9:30 PM', march(14, 21.5), 'yyyy-mm-dd hh:mm'],
    ['3/14/2026 08:00', march(14, 8), 'yyyy-mm-dd hh:mm'],
    ['3/14/2026, 8:00:30 AM', march(14) + 28830 / 86400, 'yyyy-mm-dd hh:mm'],
    ['3/14/26', march(14), 'yyyy-mm-dd'],
    ['14.03.26 08.30', march(14, 8.5), 'yyyy-mm-dd hh:mm'],
    ['14-03-2026', march(14), 'yyyy-mm-dd'],
    ['1 Mar 2026', march(1), 'yyyy-mm-dd'],
    ['1-Mar-26', march(1), 'yyyy-mm-dd'],
    ['Mar 1, 2026', march(1), 'yyyy-mm-dd'],
    ['Sunday, March 1st, 2026 8 pm', march(1, 20), 'yyyy-mm-dd hh:mm'],
    ['Sun 1. March 2026', march(1), 'yyyy-mm-dd'],
    ['08:00', 8 / 24, 'hh:mm'],
    ['9:30 p.m.', 21.5 / 24, 'hh:mm'],
    ['12 am', 0, 'hh:mm'],
    ['01/01/2026', 46023, 'yyyy-mm-dd'],
    ['1/2/1969', 0, ''],
  ])('reads %s', (text, serial, format) => {
    if (format === '') expect(csvRefusal(column(text))).not.toBe('');
    else expect(csvBook(column(text)).sheets[0]?.rows[1]?.[0]).toEqual({ value: serial, format });
  });

  it('is settled for the whole column by one part over 12', () => {
    expect(read('01/03/2026', '05/03/2026', '13/03/2026')).toEqual([march(1), march(5), march(13)]);
    expect(read('03/13/2026', '03/05/2026', '03/01/2026')).toEqual([march(13), march(5), march(1)]);
    expect(csvBook(column('01/03/2026', '13/03/2026')).remarks[0]).toContain('dates day first ("13/03/2026" in row 3)');
  });

  it('refuses a column that contradicts itself, with both rows', () => {
    expect(csvRefusal(column('13/03/2026', '03/14/2026'))).toBe(
      'The dates of one column contradict each other: "13/03/2026" in row 2 is day first, "03/14/2026" in row 3 is month first (row 3, column A); write all of them like 2026-03-14',
    );
  });

  it('is settled by the order of time where only one reading stands in it', () => {
    expect(read('11/03/2026', '12/03/2026', '01/04/2026')).toEqual([march(11), march(12), march(32)]);
    expect(read('04/01/2026', '03/12/2026', '03/11/2026')).toEqual([march(32), march(12), march(11)]);
    expect(csvBook(column('11/03/2026', '12/03/2026', '01/04/2026')).remarks[0]).toContain(
      'dates day first (only then are the rows in order of time)',
    );
  });

  it('is refused where both readings stand in order of time', () => {
    expect(csvRefusal(column('01/03/2026', '02/03/2026', '03/03/2026'))).toBe(
      'In row 2, column A the date "01/03/2026" may be day first or month first, and nothing in column A says which; write dates like 2026-03-01, or say whether the day or the month comes first',
    );
    expect(csvRefusal(column('01/03/2026', '05/01/2026', '02/04/2026'))).not.toBe('');
  });

  it('takes points for day first, unless the order of time speaks against it', () => {
    expect(read('01.03.2026', '02.03.2026')).toEqual([march(1), march(2)]);
    expect(csvBook(column('01.03.2026')).remarks[0]).toContain(
      'dates day first (as is usual with points, "01.03.2026")',
    );
    expect(csvRefusal(column('03.01.2026', '03.02.2026', '04.01.2026'))).not.toBe('');
  });

  it('takes the order of another column of the file that shows it', () => {
    const text = 'Date,Arrived\n01/03/2026,14/02/2026\n02/03/2026,x\n';
    expect(csvValues(text)[1]).toEqual([march(1), march(-14)]);
    expect(csvRefusal('Date,Arrived,Died\n01/03/2026,14/02/2026,02/14/2026\n')).not.toBe('');
  });

  it('refuses dates with one first part and several years, which may begin with the year', () => {
    expect(csvRefusal(column('26/03/13', '26/03/14'))).toContain('"26/03/13" may be day first or year first');
    expect(csvRefusal(column('26.03.13', '26.04.14'))).toContain('may be day first or year first');
    expect(csvRefusal(column('25/03/26', '26/03/26'))).toBe('');
    expect(csvRefusal(column('26/03/26', '26/04/26'))).toBe('');
    expect(csvRefusal(column('26/03/13', '26/03/14'), { dates: 'day first' })).toBe('');
  });

  it('refuses two-digit parts between hyphens that may begin with the year', () => {
    expect(csvRefusal(column('12-03-01', '12-03-02'))).toContain('may be day first or month first or year first');
    expect(read('32-03-01')).toEqual([march(1) + 6 * 365 + 2]);
  });

  it('does as it is told, and says where that cannot be', () => {
    const told = (dates: 'day first' | 'month first') =>
      csvValues(column('01/03/2026', '02/03/2026'), { dates })[1]?.[0];
    expect([told('day first'), told('month first')]).toEqual([march(1), 46025]);
    expect(csvRefusal(column('3/14/2026'), { dates: 'day first' })).toBe(
      'The date "3/14/2026" in row 2, column A is not day first, although you said so',
    );
  });

  it('leaves hours with a point to the reader of the log where the column is headed as a time', () => {
    const text =
      'Date;Time;Copper\n2026-03-01;16.00;2,05\n2026-03-02;0900;2,1\n2026-03-03;1600;2,1\n2026-03-04;8.30;1,950\n';
    expect(
      csvValues(text)
        .slice(1)
        .map(([, time, copper]) => [time, copper]),
    ).toEqual([
      ['16.00', 2.05],
      ['0900', 2.1],
      ['1600', 2.1],
      ['8.30', 1.95],
    ]);
  });
});
