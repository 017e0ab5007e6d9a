import { toleranceEntries } from '../toleranceEntries.js';

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
