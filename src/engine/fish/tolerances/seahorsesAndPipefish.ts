import { toleranceEntries } from '../toleranceEntries.js';

/** Seahorses, pipefish and their kin. */
export const seahorsesAndPipefish = [
  ...toleranceEntries({ advice: 'avoid', reason: 'syngnathid', source: 'ZecHadfieldHungerford2017' }, [
    'Seahorses, seahorse, sea horse, lined seahorse, dwarf seahorse, tiger tail seahorse, potbelly seahorse, yellow seahorse / Hippocampus, Hippocampus erectus, Hippocampus kuda, Hippocampus reidi, Hippocampus comes, Hippocampus abdominalis, Hippocampus zosterae',
    'Pipefish, pipe fish, banded pipefish, bluestripe pipefish, dragonface pipefish, flagtail pipefish / Syngnathidae, Syngnathus, Doryrhamphus, Doryrhamphus excisus, Dunckerocampus, Dunckerocampus dactyliophorus, Corythoichthys',
    'Sea dragons, sea dragon, leafy sea dragon, weedy sea dragon / Phycodurus eques, Phyllopteryx taeniolatus',
    'Pipehorses, pipehorse, pygmy pipehorse / Acentronura',
  ]),
  ...toleranceEntries({ advice: 'avoid', reason: 'syngnathid-kin', source: 'Memory' }, [
    'Ghost pipefish, harlequin ghost pipefish / Solenostomus, Solenostomus paradoxus, Solenostomidae',
    'Shrimpfish, razorfish, coral shrimpfish / Aeoliscus, Aeoliscus strigatus, Centriscus, Centriscidae',
    'Sea moths, sea moth / Pegasus, Eurypegasus, Pegasidae',
    'Trumpetfish and cornetfish, trumpetfish, cornetfish, flutemouth / Aulostomus, Fistularia',
  ]),
];
