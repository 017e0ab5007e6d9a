import { toleranceEntries } from '../toleranceEntries.js';

/** Gobies and dartfish: a mixed family, so each kind by itself. */
export const gobies = [
  ...toleranceEntries({ advice: 'caution', reason: 'goby', source: 'Memory' }, [
    'Gobies, goby / Gobiidae, Lythrypnus, Trimma, Eviota',
  ]),
  ...toleranceEntries({ advice: 'caution', reason: 'scaleless-goby', source: 'Memory' }, [
    'Clown gobies, clown goby, coral goby, yellow clown goby, green clown goby, citron goby / Gobiodon, Gobiodon okinawae, Gobiodon citrinus, Paragobiodon',
  ]),
  ...toleranceEntries({ advice: 'caution', reason: 'dartfish', source: 'Memory' }, [
    'Firefish, firefish goby, fire goby, magnificent firefish / Nemateleotris, Nemateleotris magnifica',
    'Purple firefish, decora firefish, helfrichi firefish / Nemateleotris decora, Nemateleotris helfrichi',
    'Dartfish, dart goby, scissortail goby, scissortail dartfish, zebra dartfish, gudgeon / Ptereleotris, Ptereleotris evides, Ptereleotris zebra, Microdesmidae',
  ]),
  ...toleranceEntries({ advice: 'usual care', reason: 'hardy-goby', source: 'Memory' }, [
    'Shrimp gobies, shrimp goby, watchman goby, yellow watchman goby, crab eye goby, crab eyed goby, yasha goby / Cryptocentrus, Cryptocentrus cinctus, Amblyeleotris, Stonogobiops, Signigobius biocellatus',
    'Sleeper gobies, sleeper goby, diamond goby, sand sifting goby, golden head sleeper goby / Valenciennea, Valenciennea puellaris, Valenciennea strigata, Amblygobius',
    'Neon gobies, neon goby, cleaner goby, sharknose goby / Elacatinus, Elacatinus oceanops, Gobiosoma',
  ]),
];
