import { fishNames } from '../../../src/engine/fish/fishNames';

describe('fishNames', () => {
  it.each([
    ['yellow tang, clownfish; seahorse\nmandarin', ['yellow tang', 'clownfish', 'seahorse', 'mandarin']],
    ['yellow tang,, ;', ['yellow tang']],
    ['', []],
    ['-', []],
    ['None', []],
    ['  yellow\t\u0000 tang ', ['yellow tang']],
    ['emperor angelfish (juvenile, 8 cm), clownfish', ['emperor angelfish (juvenile, 8 cm)', 'clownfish']],
    ['emperor (8 cm, clownfish', ['emperor (8 cm', 'clownfish']],
    ['emperor) 8 cm, clownfish', ['emperor) 8 cm', 'clownfish']],
    ['yellow tang 2,5 cm', ['yellow tang 2,5 cm']],
    ['yellow tang 2, clownfish', ['yellow tang 2', 'clownfish']],
  ])('takes %j apart', (text, names) => expect(fishNames(text)).toEqual(names));
});
