import { standInHost, type Answer, type ArgumentIn } from '../host/standInHost.js';

const host = standInHost();
const call = (id: string, ...args: readonly ArgumentIn[]): Answer => host.call(id, ...args);
const refused = (message: string) => ({ error: '#VALUE!', message });
const saying = (words: string | RegExp, error = '#VALUE!') => ({
  error,
  message: typeof words === 'string' ? (expect.stringContaining(words) as string) : expect.stringMatching(words),
});

describe('an argument named change', () => {
  it('is litres, a text with a unit, or a share of the volume', () => {
    expect(call('AFTERCHANGE', 200, 2, 50)).toBeCloseTo(1.5, 12);
    expect(call('AFTERCHANGE', 200, 2, '50')).toBeCloseTo(1.5, 12);
    expect(call('AFTERCHANGE', 200, 2, '50 L')).toBeCloseTo(1.5, 12);
    expect(call('AFTERCHANGE', 200, 2, '25%')).toBeCloseTo(1.5, 12);
    expect(call('AFTERCHANGE', 200, 2, ' 25 % ')).toBeCloseTo(1.5, 12);
    expect(call('AFTERCHANGE', '50 gal', 2, '12.5 gal')).toBeCloseTo(1.5, 12);
    expect(call('AFTERCHANGE', 200, 2, '0.25 L')).toBeCloseTo(2 * (1 - 0.25 / 200), 12);
    expect(call('AFTERCHANGE', 200, 2, 1.01)).toBeCloseTo(2 * (1 - 1.01 / 200), 12);
  });

  it('is not guessed at where a bare number may be a share', () => {
    expect(call('AFTERCHANGE', 200, 2, 0.25)).toEqual(
      refused('change 0.25 may be litres or a share; write "0.25 L" or "25%"'),
    );
    expect(call('CHANGEDOSE', 1, 2, 10)).toEqual(refused('change 1 may be litres or a share; write "1 L" or "100%"'));
    expect(call('CHANGEDOSE', '0.5', 2, 10)).toEqual(saying('write "0.5 L" or "50%"'));
  });

  it('needs a volume for a share, and is no more than the volume', () => {
    expect(call('CHANGEDOSE', '25%', 2, 10)).toEqual(
      refused(
        'change "25%" is a share of a volume that is not given; write the volume too, or the litres, like "50 L"',
      ),
    );
    expect(call('CHANGEDOSE', '25%', 2, 10, 200)).toBeCloseTo(10, 12);
    expect(call('AFTERCHANGE', 200, 2, '101%')).toMatchObject({ error: '#VALUE!' });
    expect(call('AFTERCHANGE', 200, 2, 201)).toEqual(
      refused('change 201 is more than volume 200 L; write at most 200'),
    );
    expect(call('AFTERCHANGE', 200, 2, 0)).toMatchObject({ error: '#VALUE!' });
    expect(call('AFTERCHANGE', 200, 2, '100%')).toBe(0);
  });
});

describe('CHANGEDOSE', () => {
  it('does without the volume, and asks for a test', () => {
    expect(call('CHANGEDOSE', 50, 2, 10)).toBeCloseTo(10, 12);
    expect(call('CHANGEDOSE', '50 L', '2 ppm', '10 g/L', '')).toBeCloseTo(10, 12);
    expect(call('CHANGEDOSE', 50, 0, 10)).toEqual(saying(/^level is 0 or empty; write "0 mg\/L"/, '#N/A'));
    expect(call('CHANGEDOSE', 50, 0, 0)).toMatchObject({ error: '#VALUE!' });
    expect(call('CHANGEDOSE', 50, '0 mg/L', 10)).toBe(0);
    expect(call('CHANGEDOSE', 50, '', 10)).toEqual(saying(/^level is blank; test first/, '#N/A'));
  });
});

describe('AFTERCHANGE', () => {
  it('takes new water without copper where its level is left out', () => {
    expect(call('AFTERCHANGE', 200, 2, 50, '')).toBeCloseTo(1.5, 12);
    expect(call('AFTERCHANGE', 200, 2, 50, 0)).toBeCloseTo(1.5, 12);
    expect(call('AFTERCHANGE', 200, 2, 50, '2 mg/L')).toBeCloseTo(2, 12);
    expect(call('AFTERCHANGE', 200, 2, 50, 'brown')).toEqual(saying(/^replacement level "brown" is not a level/));
  });
});

describe('AFTEREVAPORATION', () => {
  it('concentrates, and refuses the loss of all the water', () => {
    expect(call('AFTEREVAPORATION', 200, 2.4, '8 L')).toBeCloseTo(2.5, 12);
    expect(call('AFTEREVAPORATION', 200, 2.4, 200)).toEqual(
      refused('lost 200 is not below full volume 200 L; write less than 200'),
    );
  });
});

describe('CHANGETOLOWER', () => {
  it('gives litres, 0 where nothing is to be lowered', () => {
    expect(call('CHANGETOLOWER', 200, 2.5, 2)).toBeCloseTo(40, 12);
    expect(call('CHANGETOLOWER', 200, 2.5, 2, 1.5)).toBeCloseTo(100, 12);
    expect(call('CHANGETOLOWER', 200, 2.5, 2.5)).toBe(0);
  });

  it('does not raise, and does not reach the level of the new water', () => {
    expect(call('CHANGETOLOWER', 200, 2, 2.5)).toEqual(
      refused('wanted 2.5 is above the level 2; raising takes a dose, see QT.DOSE'),
    );
    expect(call('CHANGETOLOWER', 200, 2.5, 2, 2)).toEqual(saying('wanted 2 is not above the replacement level 2'));
  });
});

describe('CHANGESTOCLEAR', () => {
  it('takes 25, "25%" and 0.25 for the same', () => {
    for (const percent of [25, '25%', '25 %', 0.25, '0.25', '25']) {
      expect(call('CHANGESTOCLEAR', 0.2, 0.01, percent)).toBe(11);
    }
    expect(call('CHANGESTOCLEAR', 0.2, 0.01, 50)).toBe(5);
    expect(call('CHANGESTOCLEAR', 0.2, 0.01, 1)).toBe(1);
    expect(call('CHANGESTOCLEAR', 0.2, 0.01, 100)).toBe(1);
    // A text keeps its sign: 1 % each time.
    expect(call('CHANGESTOCLEAR', 0.2, 0.01, '1%')).toBe(299);
    expect(call('CHANGESTOCLEAR', 0.01, 0.2, 25)).toBe(0);
  });

  it('refuses a percent of nothing and of more than all', () => {
    expect(call('CHANGESTOCLEAR', 0.2, 0.01, 0)).toEqual(saying(/^percent 0 is outside its limits/));
    expect(call('CHANGESTOCLEAR', 0.2, 0.01, 101)).toEqual(saying('at most 100 %'));
    expect(call('CHANGESTOCLEAR', 0.2, 0.01, -5)).toMatchObject({ error: '#VALUE!' });
    expect(call('CHANGESTOCLEAR', 0.2, 0.01, 'half')).toEqual(
      refused('percent "half" is not a percentage; write one like 30 or "30%"'),
    );
  });
});
