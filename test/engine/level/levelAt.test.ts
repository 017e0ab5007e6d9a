import { levelAt } from '../../../src/engine/level/levelAt.js';
import { copperPerRootDay, serialDay } from '../../../src/engine/units/quantity.js';
import { eventsOf, type Line } from './eventsOf.js';
import { modelOf } from './modelOf.js';
import { randomLog } from './randomLog.js';

const drift = copperPerRootDay(0.05);
/** An event of which nothing is learnt: a bound without a top. */
const silent = (when: number): Line => [when, 'reading', 0, Infinity];

describe('levelAt', () => {
  it('is what the model says where an event that says nothing stands at that time', () => {
    for (let seed = 1; seed <= 20; seed++) {
      const lines = randomLog(seed, 20).slice(seed % 3);
      const lossRate = [0, 0.02, 0.2][seed % 3]!;
      const model = modelOf(lines, { drift, lossRate });
      for (let at = 0; at < lines.length; at++) {
        const when = lines[at]![0] + 0.4 * ((lines[at + 1]?.[0] ?? lines[at]![0] + 5) - lines[at]![0]);
        const more = [...lines.slice(0, at + 1), silent(when), ...lines.slice(at + 1)];
        const then = modelOf(more, { drift, lossRate });
        const level = levelAt(eventsOf(lines), model, serialDay(when));
        const isNewInstant = when > lines[at]![0];
        if (!isNewInstant) continue;
        expect(level?.expected).toBeCloseTo(then.expected[at + 1]!, 9);
        expect(level?.low).toBeCloseTo(then.low[at + 1]!, 8);
        expect(level?.high).toBeCloseTo(then.high[at + 1]!, 8);
      }
    }
  });

  it('follows evaporation between events and after the last', () => {
    const lines: Line[] = [
      [0, 'reading', 2],
      [4, 'topOff', 20],
      [5, 'dose', 10],
    ];
    for (const when of [1, 3.9, 4.5, 5.25, 6.5, 30]) {
      const at = lines.filter(([time]) => time <= when).length;
      const then = modelOf([...lines.slice(0, at), silent(when), ...lines.slice(at)], { drift });
      const level = levelAt(eventsOf(lines), modelOf(lines, { drift }), serialDay(when));
      expect(level?.expected).toBeCloseTo(then.expected[at]!, 9);
    }
  });

  it('is the level after an event at its very time, and widens after the last', () => {
    const lines: Line[] = [
      [1, 'reading', 2],
      [2, 'dose', 10],
      [3, 'reading', 2.4],
      [4, 'reading', 2.4],
    ];
    const model = modelOf(lines, { drift });
    const at = (when: number) => levelAt(eventsOf(lines), model, serialDay(when));
    expect(at(2)?.expected).toBeCloseTo(model.expected[1]!, 12);
    expect(at(4)?.high).toBeCloseTo(model.high[3]!, 12);
    expect(at(10)!.high - at(10)!.low).toBeGreaterThan(at(5)!.high - at(5)!.low);
  });

  it('carries an estimated loss on as the model does, its uncertainty too', () => {
    const lines = Array.from({ length: 12 }, (_, day): Line => [day, 'reading', 2 * Math.exp(-0.04 * day)]);
    const model = modelOf(lines, { drift });
    const then = modelOf([...lines, silent(20)], { drift });
    const level = levelAt(eventsOf(lines), model, serialDay(20));
    expect(level?.expected).toBeCloseTo(then.expected[12]!, 9);
    expect(level?.high).toBeCloseTo(then.high[12]!, 2);
    expect(level?.low).toBeCloseTo(then.low[12]!, 2);
  });

  it('is nothing before the first event and where nothing is known', () => {
    const lines: Line[] = [
      [1, 'dose', 10],
      [2, 'change', 200, 1],
      [3, 'reading', 1],
    ];
    const model = modelOf(lines, { drift });
    expect(levelAt(eventsOf(lines), model, serialDay(0.5))).toBeNull();
    expect(levelAt(eventsOf(lines), model, serialDay(1.5))).toBeNull();
    expect(levelAt(eventsOf(lines), model, serialDay(2.5))).not.toBeNull();
  });
});
