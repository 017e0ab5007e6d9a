import { thinnedCourse } from '../../../src/app/plot/thinnedCourse.js';

const course = Array.from({ length: 9000 }, (_, at) => {
  const expected = 2 + Math.sin(at / 400) + (at === 4321 ? 3 : 0) - (at === 6543 ? 1.9 : 0);
  return { when: at / 10, expected, low: expected - 0.1, high: expected + 0.1 };
});

describe('thinnedCourse', () => {
  it('keeps the lowest and the highest of each column with the whole band, in order', () => {
    const thin = thinnedCourse(course, 300);
    expect(thin.length).toBeLessThanOrEqual(4 * 300);
    const all = (pick: 'expected' | 'low' | 'high', of: (...levels: number[]) => number) =>
      [course, thin].map((points) => of(...points.map((point) => point[pick])));
    for (const [pick, of] of [
      ['expected', Math.min],
      ['expected', Math.max],
      ['low', Math.min],
      ['high', Math.max],
    ] as const) {
      const [whole, drawn] = all(pick, of);
      expect(drawn).toBe(whole);
    }
    expect(thin.every(({ when }, at) => at === 0 || when >= thin[at - 1]!.when)).toBe(true);
    expect([thin[0]?.when, thin.at(-1)?.when]).toEqual([0, 899.9]);
  });

  it('leaves a usual course alone', () => {
    const short = course.slice(0, 900);
    expect(thinnedCourse(short, 300)).toBe(short);
    expect(thinnedCourse([], 300)).toEqual([]);
  });
});
