import { officeRuntime, sentCode, type OfficeRuntime } from './host/officeRuntime.js';
import { standInHost } from './host/standInHost.js';

const when = [[46082], [46083], [46084.5]];
const copper = [[2], ['2.1 ppm'], [2.2]];
let host: OfficeRuntime;

beforeAll(async () => {
  host = await officeRuntime();
});
afterAll(() => host.close());

describe("the host's own runtime", () => {
  it('loads the page, and sends a number, a table and an error with its sentence', async () => {
    expect(host.problems).toEqual([]);
    const [number, table, refused, waiting] = await host.answers([
      ['HOLDDAYS', [when, copper, [['chelated']], null, null, null, null]],
      ['BAND', [[['chelated']]]],
      ['DOSE', [100, 2.5, 2, 10, null]],
      ['HOLDDAYS', [[[46082]], [['none']], [['chelated']], null, null, null, null]],
    ]);
    expect(number?.slice(0, 3)).toEqual([0, true, 2.5]);
    expect(table?.slice(0, 3)).toEqual([1, true, [[expect.any(Number), expect.any(Number)]]]);
    expect(refused?.slice(0, 4)).toEqual([
      2,
      false,
      expect.stringContaining('wanted 2 is below the level 2.5'),
      sentCode.invalidValue,
    ]);
    expect(waiting?.slice(0, 4)).toEqual([3, false, expect.stringMatching(/reading/), sentCode.notAvailable]);
  });

  it('hands error cells and rich cells over, and the row is named', async () => {
    const asError = { type: 'CustomFunctionError', code: '#N/A' };
    const asRich = { type: 'Double', basicValue: 2.1 };
    const [broken, rich] = await host.answers([
      ['HOLDDAYS', [when, [[2], [asError], [2.2]], [['chelated']], null, null, null, null]],
      ['HOLDDAYS', [when, [[2], [asRich], [2.2]], [['chelated']], null, null, null, null]],
    ]);
    expect(broken?.slice(0, 4)).toEqual([0, false, expect.stringMatching(/^row 2 holds /), sentCode.invalidValue]);
    expect(rich?.slice(0, 3)).toEqual([1, true, 2.5]);
  });

  it('gives what the stand-in host of the other tests gives', async () => {
    const standIn = standInHost();
    const calls = [
      ['HOLDROWS', [when, copper, [['chelated']], null, null, null, null]],
      ['DOSESPLIT', [10, 5, null, null, null, null]],
      ['MGPERL', ['purple']],
    ] as const;
    for (const [i, sent] of (await host.answers(calls)).entries()) {
      const shown = standIn.call(calls[i]![0], ...calls[i]![1]);
      const error = typeof shown === 'object' && 'error' in shown;
      expect([sent[1], sent[2]]).toEqual(error ? [false, shown.message] : [true, shown]);
    }
  });

  it('is not needed to open the page: without a network it shows its text and raises nothing', async () => {
    const alone = await officeRuntime({ offline: true });
    expect(alone.problems).toEqual([]);
    alone.close();
  });
});
