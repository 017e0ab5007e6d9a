import { toleranceEntries } from '../toleranceEntry.js';

/** Fish that usually take copper. */
export const hardyFish = [
  ...toleranceEntries({ advice: 'usual care', reason: 'usual', source: 'Memory' }, [
    'Cardinalfish, cardinal, cardinal fish / Apogonidae, Apogon, Ostorhinchus, Zoramia, Cheilodipterus',
    'Banggai cardinalfish, banggai cardinal, banggai / Pterapogon kauderni',
    'Pajama cardinalfish, pajama cardinal, pyjama cardinal / Sphaeramia nematoptera',
    'Dottybacks, dottyback, royal dottyback, bicolor dottyback, neon dottyback / Pseudochromidae, Pseudochromis, Pictichromis, Pictichromis paccagnellorum, Pseudochromis aldabraensis',
    'Royal gramma, gramma / Gramma loreto, Gramma',
    'Blackcap basslet, blackcap gramma, black cap basslet / Gramma melacara',
    'Basslets, basslet, swissguard basslet, chalk bass / Liopropoma, Liopropoma rubre, Serranus, Serranus tortugarum',
    'Assessors, yellow assessor, blue assessor, assessor / Assessor flavissimus, Assessor macneilli',
    'Comet, marine betta / Calloplesiops altivelis, Plesiopidae',
    'Groupers and hinds, grouper, hind, panther grouper, miniatus grouper, coral hind, coral trout, coral grouper / Serranidae, Epinephelus, Cephalopholis, Cromileptes altivelis, Plectropomus',
    'Hamlets, hamlet / Hypoplectrus',
    'Snappers, snapper, emperor snapper / Lutjanidae, Lutjanus, Lutjanus sebae',
    'Grunts, grunt, porkfish / Haemulidae, Haemulon, Anisotremus virginicus',
    'Hawkfish, hawk fish, coral hawkfish, falco hawkfish, arc-eye hawkfish / Cirrhitidae, Paracirrhites, Cirrhitichthys',
    'Flame hawkfish, flame hawk, flame / Neocirrhites armatus',
    'Longnose hawkfish, long nose hawkfish / Oxycirrhites typus',
    'Triggerfish, trigger, trigger fish / Balistidae, Balistes, Rhinecanthus, Sufflamen, Melichthys, Xanthichthys',
    'Clown triggerfish, clown trigger / Balistoides conspicillum',
    'Niger triggerfish, niger trigger, red tooth triggerfish / Odonus niger',
    'Picasso triggerfish, picasso trigger, humu humu / Rhinecanthus aculeatus',
    'Blue throat triggerfish, bluejaw triggerfish, blue throat trigger / Xanthichthys auromarginatus',
    'Queen triggerfish, queen trigger / Balistes vetula',
    'Undulated triggerfish, undulate trigger / Balistapus undulatus',
    'Rabbitfish, rabbit fish, spinefoot / Siganidae, Siganus',
    'Foxface, foxface rabbitfish, one spot foxface / Siganus vulpinus, Siganus unimaculatus',
    'Squirrelfish and soldierfish, squirrelfish, soldierfish / Holocentridae, Myripristis, Sargocentron, Holocentrus',
    'Jacks, jack, trevally, golden trevally, lookdown / Carangidae, Caranx, Gnathanodon speciosus, Selene vomer',
    'Monos, mono, silver moony / Monodactylus, Monodactylus argenteus',
  ]),
  ...toleranceEntries({ advice: 'usual care', reason: 'orchid-dottyback', source: 'HobbyPress2008' }, [
    'Orchid dottyback, fridmani dottyback / Pseudochromis fridmani',
  ]),
  ...toleranceEntries({ advice: 'usual care', reason: 'molly', source: 'Practice' }, [
    'Mollies, molly, black molly, sailfin molly / Poecilia, Poecilia sphenops, Poecilia latipinna',
  ]),
];

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
