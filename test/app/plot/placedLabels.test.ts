import { placedLabels } from '../../../src/app/plot/placedLabels.js';

const room = { left: 0, right: 100, lanes: 2 };

describe('placedLabels', () => {
  it('takes the first place that is free, then the next lane, else none', () => {
    const label = { lefts: [10, 60], width: 30 };
    expect(placedLabels([label, label, label, label, label], room)).toEqual([
      { left: 10, lane: 0 },
      { left: 60, lane: 0 },
      { left: 10, lane: 1 },
      { left: 60, lane: 1 },
      null,
    ]);
  });

  it('stays inside and off what is taken', () => {
    expect(placedLabels([{ lefts: [-1, 80], width: 30 }], room)).toEqual([null]);
    const taken = [{ lane: 0, left: 0, right: 50 }];
    expect(placedLabels([{ lefts: [52, 56], width: 30 }], { ...room, lanes: 1, taken })).toEqual([
      { left: 56, lane: 0 },
    ]);
  });
});
