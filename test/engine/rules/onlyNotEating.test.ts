import { onlyNotEating } from '../../../src/engine/rules/onlyNotEating.js';

describe('onlyNotEating', () => {
  it.each(['not eating', 'Not eating yet', 'refused mysis', 'off food', 'no appetite', 'not eating, hiding no more'])(
    'holds of %j',
    (text) => {
      expect(onlyNotEating(text)).toBe(true);
    },
  );

  it.each(['not eating, flashing', 'lethargic', 'not eating but breathing heavily', 'eating', 'purple', ''])(
    'does not hold of %j',
    (text) => {
      expect(onlyNotEating(text)).toBe(false);
    },
  );
});
