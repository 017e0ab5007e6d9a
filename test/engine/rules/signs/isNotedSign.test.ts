import { isNotedSign } from '../../../../src/engine/rules/signs/isNotedSign.js';

describe('isNotedSign', () => {
  it.each([
    'gasping at the surface',
    'clownfish gasping, heavy breathing',
    'tang not eating',
    'off its food since dose 3',
  ])('"%s" is a sign', (note) => expect(isNotedSign(note)).toBe(true));

  it.each([
    'no gasping',
    'eating well',
    'heavy feeding today',
    'flashing light on meter',
    'weak flow from pump',
    'spots on the glass cleaned',
    'started copper because of ich',
    'scratched glass',
    'fed mysis',
    'heater moved',
    '',
  ])('"%s" is none, or may be about something else', (note) => expect(isNotedSign(note)).toBe(false));
});
