import { norrisPoints } from '../../../src/engine/selfcheck/norrisPoints.js';
import { norris } from '../published/NistNorris.js';

describe('norrisPoints', () => {
  it('are the points that the tests transcribe', () => {
    expect(norrisPoints.x).toEqual(norris.x);
    expect(norrisPoints.y).toEqual(norris.y);
  });
});
