import { signStepAt } from '../../../../src/engine/rules/signs/signStepAt.js';
import { signSteps } from '../../../../src/engine/rules/signs/signSteps.js';

const signs = signSteps(
  ['eating well', 'white spots', 'xyzzy plugh', 'eating well, no spots', 'white spots again'].map((text, day) => ({
    when: 46000 + day,
    row: day + 2,
    text,
  })),
);

/** As it is defined: the last row by then that was understood. */
function byDefinition(when: number): string {
  let step = '';
  for (const sign of signs) if (sign.when <= when && sign.step !== 'unread') step = sign.step;
  return step;
}

describe('signStepAt', () => {
  it('is the step of the last text understood by then', () => {
    expect(signs.map(({ step }) => step)).toContain('unread');
    expect(new Set(signs.map(({ when }) => byDefinition(when))).size).toBeGreaterThan(2);
    for (let when = 45999; when < 46006; when += 0.25) expect(signStepAt(signs, when)).toBe(byDefinition(when));
  });

  it('is nothing where nothing is written', () => {
    expect(signStepAt([], 46000)).toBe('');
  });
});
