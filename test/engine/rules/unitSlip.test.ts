import { unitSlip } from '../../../src/engine/rules/unitSlip.js';
import { findingsBy, foundBy, raisedLog } from './raisedLog.js';

const then = `
  2026-03-09 08:00 | 2.24 |
  2026-03-10 08:00 | 2.25 |
`;

describe('unitSlip', () => {
  it.each([
    ['22.5', 'point moved', 2.25],
    ['0.224', 'point moved', 2.24],
    ['225', 'point lost', 2.25],
    ['2250', 'micrograms', 2.25],
    ['0.00224', 'milligrams', 2.24],
    ['"0,225"', 'point moved', 2.25],
    ['2.52', 'digits swapped', 2.25],
    ['0.22', 'point moved', 2.2],
  ])('names what %s stands for', (written, cause, meant) => {
    const log = `${raisedLog}  2026-03-08 08:00 | ${written.replace(/"/g, '')} |${then}`;
    expect(foundBy(unitSlip, log)).toEqual(['warning 9 unit-slip']);
    expect(findingsBy(unitSlip, log)[0]).toMatchObject({ cause, dosed: false });
    expect((findingsBy(unitSlip, log)[0] as unknown as { meant: number }).meant).toBeCloseTo(meant, 6);
  });

  it('is a danger once something was dosed on it', () => {
    const log = `${raisedLog}
      2026-03-08 08:00 | 0.225 | 10
      2026-03-09 08:00 | 2.74  |
      2026-03-10 08:00 | 2.75  |
    `;
    expect(foundBy(unitSlip, log)).toEqual(['danger 9 unit-slip']);
    const unreadable = `${raisedLog}
      2026-03-08 08:00 | 225  | 1
      2026-03-09 08:00 | 2.3  |
    `;
    expect(foundBy(unitSlip, unreadable)).toEqual(['danger 9 unit-slip']);
  });

  it('names a slip while raising, and one in the last row', () => {
    const raising = raisedLog.replace('1.12 ', '11.2 ');
    expect(foundBy(unitSlip, raising)).toEqual(['danger 4 unit-slip']);
    expect(foundBy(unitSlip, `${raisedLog}  2026-03-08 08:00 | 22.6 |`)).toEqual(['warning 9 unit-slip']);
  });

  it('finds nothing in a log without one', () => {
    expect(foundBy(unitSlip, raisedLog + then)).toEqual([]);
  });

  it('leaves a reading alone that the next one confirms', () => {
    const log = `${raisedLog}
      2026-03-08 08:00 | 0.225 |
      2026-03-09 08:00 | 0.22  |
      2026-03-10 08:00 | 0.22  |
    `;
    expect(foundBy(unitSlip, log)).toEqual([]);
  });

  it('leaves a stray reading alone that no slip explains', () => {
    expect(foundBy(unitSlip, `${raisedLog}  2026-03-08 08:00 | 1.7 |${then}`)).toEqual([]);
    expect(foundBy(unitSlip, `${raisedLog}  2026-03-08 08:00 | 950 |${then}`)).toEqual([]);
    expect(foundBy(unitSlip, `${raisedLog}  2026-03-08 08:00 | purple |${then}`)).toEqual([]);
  });

  it('changes over no digit that is not written, and only where it comes much nearer', () => {
    const low = raisedLog.replace(/2\.2[45]/g, '1.9');
    const after = then.replace(/2\.2[45]/g, '1.9');
    expect(foundBy(unitSlip, `${low}  2026-03-08 08:00 | 2.2 |${after}`)).toEqual([]);
    const near = raisedLog.replace(/2\.2[45]/g, '1.95');
    const stays = then.replace(/2\.2[45]/g, '1.95');
    expect(foundBy(unitSlip, `${near}  2026-03-08 08:00 | 2.20 |${stays}`)).toEqual([]);
  });

  it('leaves a difference within the error of the meter alone', () => {
    expect(foundBy(unitSlip, `${raisedLog}  2026-03-08 08:00 | 2.31 |${then}`)).toEqual([]);
  });
});
