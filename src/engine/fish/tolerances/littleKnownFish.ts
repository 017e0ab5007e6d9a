import { toleranceEntries } from '../toleranceEntries.js';

/** Fish of which little is known in copper, or that ask for more care than most. */
export const littleKnownFish = [
  ...toleranceEntries({ advice: 'caution', reason: 'little-known', source: 'Memory' }, [
    'Filefish, file fish, leatherjacket, bristletail filefish, matted filefish / Monacanthidae, Acreichthys tomentosus, Pervagor, Chaetodermis',
    'Tilefish, tile fish, purple tilefish, chameleon tilefish / Malacanthidae, Hoplolatilus, Hoplolatilus purpureus, Malacanthus',
    'Batfish, spadefish, orbic batfish, teira batfish, pinnatus batfish / Ephippidae, Platax, Platax orbicularis, Platax teira, Platax pinnatus',
    'Sweetlips, sweet lips, clown sweetlips / Plectorhinchus, Plectorhinchus chaetodonoides',
    'Goatfish, goat fish / Mullidae, Parupeneus',
    'Drums and croakers, drum, jackknife fish, highhat, high hat, croaker / Sciaenidae, Equetus, Pareques',
    'Pinecone fish, pineapple fish / Monocentridae, Monocentris, Cleidopus',
    'Flashlight fish / Anomalopidae, Anomalops, Photoblepharon',
    'Flatfish, flounder, sole, halibut, peacock flounder / Pleuronectiformes, Bothus, Paralichthys',
    'Sand perches, sand perch, grubfish / Pinguipedidae, Parapercis',
    'Remoras, remora, sharksucker / Echeneidae, Echeneis, Remora remora',
    'Scats, scat / Scatophagus, Scatophagus argus',
  ]),
  ...toleranceEntries({ advice: 'caution', reason: 'soapfish', source: 'Memory' }, [
    'Soapfish, soap fish, six-line soapfish, goldribbon soapfish / Grammistes, Grammistes sexlineatus, Rypticus, Pogonoperca',
  ]),
];
