import { toleranceEntries } from '../toleranceEntries.js';

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
