import fc from 'fast-check';
import { standInHost, type Answer, type ArgumentIn, type Scalar } from '../host/standInHost.js';

const host = standInHost();
const card = [
  ['Volume', '200 L'],
  ['Form', 'chelated'],
  ['Strength', 10],
];
const call = (name: string, ...given: readonly ArgumentIn[]): Answer => {
  const takes = host.metadata.functions.find(({ id }) => id === name)?.parameters.length ?? 0;
  return host.call(name, ...given.slice(0, takes));
};
const table = (name: string, ...given: readonly ArgumentIn[]): Scalar[][] => {
  const answer = call(name, ...given);
  if (!Array.isArray(answer)) throw new Error(JSON.stringify(answer));
  return answer;
};
const reasonOf = (name: string, ...given: readonly ArgumentIn[]): string => {
  const answer = call(name, ...given);
  return typeof answer === 'object' && 'message' in answer ? (answer.message ?? '') : '';
};

describe('the functions of a whole log', () => {
  it('refuse a log of several systems outside SYSTEMS, naming them', () => {
    const log = [
      ['Rack', 'When', 'Cu'],
      ['North', 46082, 2.2],
      ['South', 46082, 2.2],
    ];
    for (const name of ['LEVELS', 'AUDIT', 'DONOW', 'READY', 'FISHDAYS']) {
      expect(reasonOf(name, log, card, 46083)).toMatch(/2 systems, "North" or "South".*QT\.SYSTEMS/);
    }
    expect(
      table(
        'AUDIT',
        log.map((row) => row.map((cell) => (cell === 'South' ? ' NORTH ' : cell))),
        card,
      ),
    ).toHaveLength(
      table(
        'AUDIT',
        log.map((row) => row.map((cell) => (cell === 'South' ? 'North' : cell))),
        card,
      ).length,
    );
  });

  it('name what is missing: a heading, the volume, the form', () => {
    expect(
      reasonOf(
        'AUDIT',
        [
          ['When', 'Weather'],
          [46082, 'rain'],
        ],
        card,
      ),
    ).toMatch(/no heading read as copper/);
    expect(
      reasonOf(
        'AUDIT',
        [
          ['When', 'Cu'],
          [46082, 2],
        ],
        [['Form', 'chelated']],
      ),
    ).toMatch(/card has no volume/);
    expect(
      reasonOf(
        'AUDIT',
        [
          ['When', 'Cu'],
          [46082, 2],
        ],
        [['Volume', 200]],
      ),
    ).toMatch(/card has no form or band/);
    expect(
      reasonOf(
        'AUDIT',
        [
          ['When', 'Cu', 'Copper ppm'],
          [46082, 2, 2],
        ],
        card,
      ),
    ).toMatch(/"Cu" and "Copper ppm" are both read as copper/);
    expect(
      reasonOf(
        'SYSTEMS',
        [
          ['When', 'Cu'],
          [46082, 2],
        ],
        [
          ['System', 'Volume', 'Form'],
          ['A', 1, 'amine'],
        ],
        46083,
      ),
    ).toMatch(/no heading read as system/);
  });

  it('need the moment where one is asked for', () => {
    const log = [
      ['When', 'Cu'],
      [46082, 2],
    ];
    for (const name of ['DONOW', 'READY']) expect(reasonOf(name, log, card, null)).toMatch(/^as of is blank/);
  });

  it('audit the rest of a log with a row that cannot be read, and refuse levels on it', () => {
    const log = [
      ['When', 'Cu'],
      [46082, 2.2],
      [46083, 'LOW'],
      [46084, 2.2],
    ];
    const rows = table('AUDIT', log, card);
    expect(String(rows[1]?.[3])).toMatch(/^open because of row 3/);
    expect(rows.some(([severity, , row]) => severity === 'warning' && row === 3)).toBe(true);
    expect(reasonOf('LEVELS', log, card)).toMatch(/^row 3: "LOW" is not a reading/);
  });

  it('leave out what comes after the moment asked for', () => {
    const log = [
      ['When', 'Cu'],
      [46082, 2.2],
      [46083, 2.2],
      [46084, 1.0],
    ];
    expect(String(table('AUDIT', log, card, 46083)[1]?.[3])).toMatch(/^running/);
    expect(table('AUDIT', log, card).some(([severity]) => severity === 'danger')).toBe(true);
  });

  it('give severities in their order, and nothing but the five words of a verdict', () => {
    const log = [
      ['When', 'Cu', 'Comments'],
      [46082, 2.2, ''],
      [46083, 1.2, 'used ammonia binder'],
      [46084, '~2.2', ''],
      [46088, 2.2, ''],
    ];
    const severities = table('AUDIT', log, card)
      .slice(1)
      .map(([severity]) => String(severity));
    const order = ['verdict', 'danger', 'warning', 'note'];
    expect(severities.map((word) => order.indexOf(word))).toEqual(
      [...severities.map((word) => order.indexOf(word))].sort((a, b) => a - b),
    );
    expect(severities.every((word) => order.includes(word))).toBe(true);
  });
});

describe('a whole log and the functions of its columns', () => {
  const reading = fc.oneof(
    { weight: 6, arbitrary: fc.integer({ min: 196, max: 250 }).map((x) => x / 100) },
    { weight: 1, arbitrary: fc.integer({ min: 100, max: 194 }).map((x) => x / 100) },
  );
  const rows = fc.array(fc.tuple(fc.integer({ min: 0, max: 900 }), reading), { minLength: 1, maxLength: 30 });

  it('agree on days and start, for every longest gap, confirm and arrival', () => {
    let running = 0;
    fc.assert(
      fc.property(
        rows,
        fc.constantFrom(24, 48, 96, 'none'),
        fc.constantFrom(1, 2),
        fc.option(fc.integer({ min: 46082, max: 46120 }), { nil: null }),
        (log, gap, confirm, arrived) => {
          const when = log.map(([hour]) => [46082 + hour / 24]);
          const copper = log.map(([, level]) => [level]);
          const asOf = 46082 + 920 / 24;
          const whole = [['When', 'Cu'], ...log.map(([hour, level]) => [46082 + hour / 24, level])];
          const cards = [
            ['System', 'Volume', 'Form', 'Longest gap', 'Confirm', 'Arrived', 'Days'],
            ['Q', 200, 'chelated', gap, confirm, arrived, 30],
          ];
          const shared = whole.map((row, at) => [at === 0 ? 'System' : 'q', ...row]);
          const days = call('HOLDDAYS', when, copper, 'chelated', asOf, arrived, gap, confirm);
          const [, standing] = table('SYSTEMS', shared, cards, asOf);
          const start = call('HOLDSTART', when, copper, 'chelated', asOf, arrived, gap, confirm);
          if (typeof start !== 'number' || start > asOf) {
            expect(standing?.slice(4, 6)).toEqual(['', '']);
            return;
          }
          running++;
          expect(standing?.[4]).toBe(Math.floor(Number(days) + 1 / 86400) + 1);
          expect(standing?.[5]).toBeCloseTo(Math.max(0, 30 - Number(days)), 6);
        },
      ),
      { numRuns: 300, seed: 4 },
    );
    expect(running).toBeGreaterThan(50);
  });
});
