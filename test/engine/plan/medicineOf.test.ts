import { medicineOf } from '../../../src/engine/plan/medicineOf.js';

describe('medicineOf', () => {
  it.each<[ReturnType<typeof medicineOf>, string[]]>([
    ['praziquantel', ['praziquantel', 'Praziquantel bath', 'prazi', 'PZQ', 'praziquantal', 'prazaquantel']],
    ['metronidazole', ['metronidazole', 'Metro', 'metronidazol', 'metronidazole in food', 'metranidazole']],
    ['formalin', ['formalin', 'formalin 37 %', 'formaldehyde', 'Formaline']],
    [
      'binder',
      [
        'ammonia binder',
        'ammonia detoxifier',
        'ammonia-remover',
        'dechlorinator',
        'water conditioner',
        'conditioner',
        'sodium thiosulfate',
        'sodium thiosulphate',
        'dechlor',
      ],
    ],
    ['low-salinity', ['hyposalinity', 'hypo', 'low salinity', 'low-salinity treatment']],
    ['copper-remover', ['activated carbon', 'carbon', 'resin', 'copper pad', 'copper remover', 'charcoal', 'zeolite']],
    ['more-copper', ['copper', 'copper sulphate', 'chelated copper', 'sulphate']],
    [
      null,
      [
        '',
        'garlic',
        'magnesium sulfate',
        'chloramine-T',
        'kanamycin',
        'methylene blue',
        'moon dust',
        'hypodermic',
        'constructor',
        '12',
      ],
    ],
  ])('takes for %s', (medicine, texts) => {
    for (const text of texts) expect([text, medicineOf(text)]).toEqual([text, medicine]);
  });
});
