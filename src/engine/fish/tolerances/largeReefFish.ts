import { toleranceEntries } from '../toleranceEntry.js';

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

/** Butterflyfish, bannerfish and the moorish idol. */
export const butterflyfish = [
  ...toleranceEntries({ advice: 'caution', reason: 'butterflyfish', source: 'Memory' }, [
    'Butterflyfish, butterfly, butterfly fish / Chaetodontidae, Chaetodon, Hemitaurichthys, Prognathodes',
    'Longnose butterflyfish, longnose butterfly, yellow longnose butterflyfish / Forcipiger, Forcipiger flavissimus, Forcipiger longirostris',
    'Raccoon butterflyfish, raccoon butterfly / Chaetodon lunula',
    'Auriga butterflyfish, threadfin butterflyfish, auriga butterfly / Chaetodon auriga',
    'Pearlscale butterflyfish, pearlscale butterfly / Chaetodon xanthurus',
    "Klein's butterflyfish, kleins butterfly, sunburst butterflyfish / Chaetodon kleinii",
    'Pyramid butterflyfish, pyramid butterfly / Hemitaurichthys polylepis',
    'Bannerfish, banner fish, heniochus, longfin bannerfish, schooling bannerfish, heniochus butterflyfish / Heniochus, Heniochus acuminatus, Heniochus diphreutes',
  ]),
  ...toleranceEntries({ advice: 'caution', reason: 'poor-eater', source: 'Memory' }, [
    'Copperband butterflyfish, copperband, copperband butterfly, copper band butterfly / Chelmon rostratus, Chelmon',
    'Moorish idol / Zanclus cornutus, Zanclidae',
  ]),
  ...toleranceEntries({ advice: 'avoid', reason: 'coral-eater', source: 'Memory' }, [
    'Coral-eating butterflyfish, coral eating butterfly, corallivore',
    'Ornate butterflyfish, ornate butterfly / Chaetodon ornatissimus',
    "Meyer's butterflyfish, meyeri butterfly / Chaetodon meyeri",
    'Chevron butterflyfish, chevron butterfly / Chaetodon trifascialis',
    'Melon butterflyfish, redfin butterflyfish, oval butterflyfish / Chaetodon trifasciatus, Chaetodon lunulatus',
    'Eight-banded butterflyfish, eight banded butterfly / Chaetodon octofasciatus',
    'Orange-spotted filefish, harlequin filefish / Oxymonacanthus longirostris, Oxymonacanthus',
  ]),
];

/** Tangs and surgeonfish. */
export const tangs = [
  ...toleranceEntries({ advice: 'caution', reason: 'tang', source: 'Memory' }, [
    'Tangs, tang, surgeonfish, surgeon fish, surgeon, doctorfish / Acanthuridae, Acanthurus, Zebrasoma, Naso, Prionurus',
    'Yellow tang, yellow sailfin tang / Zebrasoma flavescens',
    'Blue tang, hippo tang, regal tang, palette surgeonfish, pacific blue tang, royal blue tang, regal blue tang / Paracanthurus hepatus, Paracanthurus',
    'Atlantic blue tang, caribbean blue tang / Acanthurus coeruleus',
    'Purple tang / Zebrasoma xanthurum',
    'Sailfin tang / Zebrasoma veliferum',
    "Desjardin's tang, desjardini tang, desjardini sailfin tang, red sea sailfin tang / Zebrasoma desjardinii",
    'Scopas tang, brown tang / Zebrasoma scopas',
    'Gem tang / Zebrasoma gemmatum',
    'Black tang, longnose black tang / Zebrasoma rostratum',
    'Bristletooth tangs, bristletooth, bristletooth tang / Ctenochaetus',
    'Kole tang, yellow eye kole tang, yellow eye tang / Ctenochaetus strigosus',
    'Tomini tang / Ctenochaetus tominiensis',
    'Chevron tang / Ctenochaetus hawaiiensis',
    'Convict tang, manini / Acanthurus triostegus',
    'Sohal tang, sohal surgeonfish / Acanthurus sohal',
    'Clown tang, lined surgeonfish, lined tang / Acanthurus lineatus',
    'Orange shoulder tang, orange band surgeonfish / Acanthurus olivaceus',
    'Mimic tang, chocolate tang / Acanthurus pyroferus',
    'Naso tang, blonde naso tang, lipstick tang / Naso lituratus, Naso elegans',
    'Unicornfish, unicorn tang, vlamingi tang / Naso unicornis, Naso vlamingii, Naso brevirostris',
  ]),
  ...toleranceEntries({ advice: 'caution', reason: 'delicate-tang', source: 'Memory' }, [
    'Achilles tang, achilles / Acanthurus achilles',
    'Powder blue tang, powder blue, powder blue surgeonfish / Acanthurus leucosternon',
    'Powder brown tang, powder brown / Acanthurus japonicus',
    'Goldrim tang, whitecheek tang, gold rim tang / Acanthurus nigricans',
  ]),
];
