import { isDenied } from '../../../src/engine/rules/isDenied.js';

const denied = (text: string): boolean => {
  const from = text.indexOf('resin');
  return isDenied(text, { from, to: from + 'resin'.length });
};

describe('isDenied', () => {
  it.each([
    'no resin',
    'without resin',
    'no carbon, pads or resin',
    'never put resin in',
    "didn't use resin",
    'resin not used',
    'resin was never added',
    'resin: none',
    'resin-free filter',
    'pads instead of resin',
  ])('holds of %j', (text) => {
    expect(denied(text)).toBe(true);
  });

  it.each([
    'resin',
    'added resin',
    'no ammonia, resin added',
    'no signs. resin in',
    'not eating, resin in the filter',
    'no fish added resin',
    'resin, no carbon',
  ])('does not hold of %j', (text) => {
    expect(denied(text)).toBe(false);
  });
});
