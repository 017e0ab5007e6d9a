import { namedMedicines } from '../../../src/engine/plan/namedMedicines.js';

describe('namedMedicines', () => {
  it.each<[string[], string[]]>([
    [['praziquantel'], ['praziquantel']],
    [['praziquantel, metronidazole; formalin'], ['praziquantel', 'metronidazole', 'formalin']],
    [
      ['praziquantel and formalin', 'carbon + resin'],
      ['praziquantel', 'formalin', 'carbon', 'resin'],
    ],
    [['Prazi\nprazi', '  PRAZI '], ['Prazi']],
    [['', ' ', 'none', '-', ',,;'], []],
    [['methylene   blue'], ['methylene blue']],
    [['sandalwood'], ['sandalwood']],
  ])('finds in %j', (texts, names) => {
    expect(namedMedicines(texts)).toEqual(names);
  });
});
