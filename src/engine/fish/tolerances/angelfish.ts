import { toleranceEntries } from '../toleranceEntries.js';

/** Dwarf and large angelfish. */
export const angelfish = [
  ...toleranceEntries({ advice: 'caution', reason: 'dwarf-angelfish', source: 'HobbyPress2008' }, [
    'Dwarf angelfish, dwarf angel, pygmy angelfish, pygmy angel, cherub angelfish, cherub angel, cherubfish / Centropyge, Paracentropyge',
    'Coral beauty, coral beauty angelfish, coral beauty angel, two-spined angelfish / Centropyge bispinosa',
    'Bicolor angelfish, bicolor angel, bicolour angelfish, oriole angelfish / Centropyge bicolor',
    'Lemonpeel angelfish, lemonpeel angel, lemonpeel, lemon peel angelfish / Centropyge flavissima',
    "Potter's angelfish, potter's angel / Centropyge potteri",
    'Rusty angelfish, rusty angel / Centropyge ferrugata',
    "Eibl's angelfish, eibli angelfish, eibli angel / Centropyge eibli",
    'Half-black angelfish, half-black angel, pearlscale angelfish / Centropyge vrolikii',
    'Midnight angelfish, midnight angel / Centropyge nox',
    'Multicolor angelfish, multicolour angelfish, multicolor angel / Paracentropyge multifasciata, Centropyge multicolor',
    'Flameback angelfish, flameback angel, african flameback / Centropyge acanthops, Centropyge aurantonotus',
  ]),
  ...toleranceEntries({ advice: 'caution', reason: 'flame-angelfish', source: 'HobbyPress2008' }, [
    'Flame angelfish, flame angel, flame / Centropyge loricula, Centropyge loriculus',
  ]),
  ...toleranceEntries({ advice: 'caution', reason: 'large-angelfish', source: 'Memory' }, [
    'Angelfish, angel, large angelfish, large angel, marine angelfish / Pomacanthidae, Pomacanthus, Holacanthus, Apolemichthys, Chaetodontoplus',
    'Emperor angelfish, emperor angel, imperator angelfish / Pomacanthus imperator',
    'Koran angelfish, koran angel, semicircle angelfish / Pomacanthus semicirculatus',
    'Blueface angelfish, blueface angel, yellowmask angelfish / Pomacanthus xanthometopon',
    'French angelfish, french angel / Pomacanthus paru',
    'Gray angelfish, grey angelfish, gray angel / Pomacanthus arcuatus',
    'Majestic angelfish, majestic angel, bluegirdled angelfish, navarchus angelfish / Pomacanthus navarchus',
    'Annularis angelfish, blue ring angelfish / Pomacanthus annularis',
    'Asfur angelfish, asfur angel, arabian angelfish / Pomacanthus asfur',
    'Maculosus angelfish, yellowbar angelfish / Pomacanthus maculosus',
    'Queen angelfish, queen angel / Holacanthus ciliaris',
    'Blue angelfish, blue angel / Holacanthus bermudensis',
    'Rock beauty, rock beauty angelfish, rock beauty angel / Holacanthus tricolor',
    'Passer angelfish, king angelfish / Holacanthus passer',
    'Flagfin angelfish, three-spot angelfish / Apolemichthys trimaculatus',
    'Swallowtail angelfish, lyretail angelfish, swallowtail angel, bellus angelfish, watanabe angelfish / Genicanthus, Genicanthus bellus, Genicanthus watanabei, Genicanthus melanospilos',
  ]),
  ...toleranceEntries({ advice: 'caution', reason: 'poor-eater', source: 'Memory' }, [
    'Regal angelfish, regal angel, royal angelfish / Pygoplites diacanthus, Pygoplites',
  ]),
];
