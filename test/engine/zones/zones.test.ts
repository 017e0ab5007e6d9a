import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';
import type { Answer, ArgumentIn } from '../../host/standInHost.js';

/** Minutes west of UTC in January and July 2026. Lord Howe moves its clocks by half an hour; Apia left out a day in 2011. */
const zones = {
  UTC: [0, 0],
  'America/St_Johns': [210, 150],
  'Australia/Lord_Howe': [-660, -630],
  'Pacific/Apia': [-780, -780],
} as const;
type Zone = keyof typeof zones;

/** Days on which one of the zones moves its clocks, some of the times such as no clock there shows. */
const when = [
  ['2011-12-29 12:00'],
  ['2011-12-30 12:00'],
  ['2011-12-31 12:00'],
  ['2026-03-07 02:30'],
  ['2026-03-08 02:30'],
  ['2026-03-09T02:30:00'],
  ['2026-04-04 01:45'],
  ['2026-04-05 01:45'],
  ['2026-10-04 02:15'],
  ['2026-11-01 01:15'],
  [46328.0625],
];
const copper = when.map((_, i) => [i === 3 ? '1.2' : 2.1]);
const twoColumns = [
  ['2026-03-07', '02:30'],
  ['2026-03-08', '2:30 AM'],
  [46090, 0.104166666666667],
];
const levels = [[2.2], ['2.1 ppm'], [2]];
const untimed = [null, null, 'none', null] as const;

const calls: readonly (readonly [string, ...ArgumentIn[]])[] = [
  ['HOLDDAYS', when, copper, 'chelated', ...untimed],
  ['HOLDDAYS', when, copper, 'chelated', '2026-11-02 08:00', '2026-03-08 02:30', 'none', 2],
  ['HOLDSTART', when, copper, 'chelated', ...untimed],
  ['HOLDENDS', when, copper, 'chelated', ...untimed],
  ['HOLDROWS', when, copper, 'chelated', ...untimed],
  ['HOLDS', when, copper, 'chelated'],
  ['HOLDDAYS', twoColumns, levels, 'chelated'],
  ['HOLDROWS', twoColumns, levels, 'chelated'],
  ['LOSSRATE', twoColumns, levels],
  ['DOSESPLIT', 12, 3, 3, '2026-03-07 14:00'],
  ['RAMP', 100, 0, 2, 10, '2026-10-02 09:00', 'gradual'],
];

function answersIn(zone: Zone): { offsets: number[]; answers: Answer[] } {
  const script = resolve('test/engine/zones/inZone.cjs');
  const run = spawnSync(process.execPath, [script], {
    input: JSON.stringify(calls),
    env: { ...process.env, TZ: zone },
    encoding: 'utf8',
  });
  if (run.status !== 0) throw new Error(run.stderr);
  return JSON.parse(run.stdout);
}

describe('the cell functions in four time zones', () => {
  const inUtc = answersIn('UTC');

  it('count days of 24 hours over every change of the clocks', () => {
    // 2026-03-07 02:30 to 2026-03-09 02:30 is two days wherever it is
    expect(inUtc.answers[6]).toBeCloseTo(2, 6);
    expect(inUtc.answers.filter((answer) => typeof answer === 'object' && 'error' in answer)).toEqual([]);
  });

  it.each(Object.keys(zones) as Zone[])('answer in %s what they answer in UTC', (zone) => {
    const there = answersIn(zone);
    expect(there.offsets).toEqual(zones[zone]);
    expect(there.answers).toEqual(inUtc.answers);
  });
});
