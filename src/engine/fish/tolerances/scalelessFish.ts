import { toleranceEntries } from '../toleranceEntries.js';

/** Lionfish, frogfish, blennies and others with few scales or none. */
export const scalelessFish = [
  ...toleranceEntries({ advice: 'caution', reason: 'lionfish', source: 'Memory' }, [
    'Lionfish, lion fish, turkeyfish, volitans, volitans lionfish, radiata lionfish / Pterois, Pterois volitans, Pterois radiata, Pterois antennata',
    'Dwarf lionfish, fuzzy dwarf lionfish, zebra lionfish, fu manchu lionfish / Dendrochirus, Dendrochirus zebra, Dendrochirus brachypterus, Dendrochirus biocellatus',
    'Scorpionfish, scorpion fish, coral scorpionfish, rhinopias, waspfish, sea goblin, stingfish / Scorpaenidae, Scorpaena, Scorpaenopsis, Ablabys, Inimicus',
    'Stonefish, stone fish / Synanceia, Synanceia verrucosa',
    'Leaf scorpionfish, leaf fish, paper scorpionfish / Taenianotus triacanthus',
    'Coral crouchers, coral croucher, velvetfish / Caracanthus',
  ]),
  ...toleranceEntries({ advice: 'avoid', reason: 'frogfish', source: 'Memory' }, [
    'Frogfish, frog fish, angler, anglerfish, sargassumfish, wartskin angler / Antennariidae, Antennarius, Antennatus, Histrio histrio',
    'Walking batfish, handfish / Ogcocephalidae, Ogcocephalus, Halieutaea',
  ]),
  ...toleranceEntries({ advice: 'avoid', reason: 'scaleless', source: 'Memory' }, [
    'Scaleless fish, scaleless',
    'Coral catfish, striped eel catfish, eel catfish, catfish / Plotosus lineatus, Plotosidae',
    'Clingfish, urchin clingfish / Gobiesocidae, Diademichthys lineatus',
    'Toadfish, oyster toadfish, stargazer / Batrachoididae, Opsanus, Uranoscopus',
    'Convict blenny, engineer goby / Pholidichthys leucotaenia',
  ]),
  ...toleranceEntries({ advice: 'avoid', reason: 'mudskipper', source: 'Memory' }, [
    'Mudskippers, mudskipper / Periophthalmus',
  ]),
  ...toleranceEntries({ advice: 'caution', reason: 'blenny', source: 'Memory' }, [
    'Blennies, blenny, barnacle blenny, mussel blenny, oyster blenny, coral blenny / Blenniidae, Salarias, Ecsenius, Cirripectes, Ophioblennius, Blenniella',
    'Lawnmower blenny, jewelled blenny, algae blenny / Salarias fasciatus',
    'Bicolor blenny, bicolour blenny / Ecsenius bicolor',
    'Midas blenny, golden blenny / Ecsenius midas',
    'Tailspot blenny / Ecsenius stigmatura',
    'Fang blennies, fang blenny, canary blenny, lyretail blenny, sabretooth blenny / Meiacanthus, Meiacanthus oualanensis, Plagiotremus',
  ]),
  ...toleranceEntries({ advice: 'caution', reason: 'jawfish', source: 'Memory' }, [
    'Jawfish, yellowhead jawfish, pearly jawfish, blue spot jawfish / Opistognathidae, Opistognathus, Opistognathus aurifrons, Opistognathus rosenblatti',
  ]),
];
