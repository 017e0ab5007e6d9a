import type { Condition } from './condition.js';

/** Every condition, with the words people use for it. */
export const conditions: readonly Condition[] = [
  {
    key: 'white-spot',
    name: 'white spot',
    also: ['ich', 'ick', 'marine ich', 'saltwater ich', 'crypto', 'cryptocaryon', 'Cryptocaryon irritans', 'cryptocaryonosis', 'cryptocaryoniasis', 'white spot disease', 'marine white spot'],
  },
  {
    key: 'velvet',
    name: 'velvet',
    also: ['marine velvet', 'velvet disease', 'amyloodinium', 'Amyloodinium ocellatum', 'amyloodiniosis', 'amyloodiniasis', 'oodinium', 'coral fish disease', 'gold dust disease'],
  },
  { key: 'trichodina', name: 'Trichodina', also: ['trichodiniasis', 'trichodiniosis', 'trichodinid'] },
  {
    key: 'brooklynella',
    name: 'Brooklynella',
    also: ['brook', 'brooklynellosis', 'Brooklynella hostilis', 'clownfish disease', 'anemonefish disease', 'slime blotch'],
  },
  {
    key: 'uronema',
    name: 'Uronema',
    also: ['Uronema marinum', 'uronemosis', 'scuticociliate', 'scuticociliatosis', 'Miamiensis avidus'],
  },
  {
    key: 'flukes',
    name: 'flukes',
    also: ['fluke', 'gill flukes', 'skin flukes', 'body flukes', 'eye flukes', 'monogenean', 'monogenea', 'monogenean trematode', 'capsalid', 'Neobenedenia', 'Neobenedenia melleni', 'Neobenedenia girellae', 'Benedenia', 'Dactylogyrus', 'Gyrodactylus'],
  },
  {
    key: 'black-spot',
    name: 'black spot',
    also: ['black ich', 'black spot disease', 'tang disease', 'turbellarian', 'black spot turbellarian', 'Paravortex', 'Piscinquilinus'],
  },
  {
    key: 'bacterial',
    name: 'bacterial',
    also: ['bacteria', 'bacterial infection', 'bacterial disease', 'fin rot', 'tail rot', 'mouth rot', 'ulcer', 'sepsis', 'septicaemia', 'septicemia', 'vibrio', 'vibriosis', 'popeye', 'pop eye', 'columnaris'],
  },
  {
    key: 'worms',
    name: 'intestinal worms',
    also: ['internal worms', 'gut worms', 'stomach worms', 'worms', 'nematode', 'roundworm', 'cestode', 'tapeworm', 'digenean', 'intestinal parasites', 'internal parasites', 'white stringy faeces', 'white stringy feces'],
  },
  { key: 'lymphocystis', name: 'lymphocystis', also: ['lympho', 'cauliflower disease'] },
  {
    key: 'unknown',
    name: 'unknown',
    also: ['not known', 'unsure', 'not sure', 'undiagnosed', 'no idea', 'no diagnosis', 'do not know', "don't know", 'sick', 'unwell'],
  },
];
