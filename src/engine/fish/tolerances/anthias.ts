import { toleranceEntries } from '../toleranceEntries.js';

/** Anthias. */
export const anthias = [
  ...toleranceEntries({ advice: 'caution', reason: 'anthias', source: 'Memory' }, [
    'Anthias / Serranidae, Anthiinae, Anthiadinae, Pseudanthias, Mirolabrichthys, Plectranthias',
    'Lyretail anthias / Pseudanthias squamipinnis',
    "Bartlett's anthias, bartletts anthias / Pseudanthias bartlettorum",
    'Carberryi anthias, threadfin anthias / Nemanthias carberryi',
    'Dispar anthias / Pseudanthias dispar',
    'Bimaculatus anthias, twinspot anthias / Pseudanthias bimaculatus',
    'Squareback anthias, square anthias / Pseudanthias pleurotaenia',
    'Resplendent anthias / Pseudanthias pulcherrimus',
  ]),
  ...toleranceEntries({ advice: 'avoid', reason: 'deep-anthias', source: 'Memory' }, [
    'Ventralis anthias, longfin anthias / Pseudanthias ventralis',
    'Purple queen anthias, tuka anthias / Pseudanthias tuka, Pseudanthias pascalus',
    "Evansi anthias, evan's anthias / Pseudanthias evansi",
    'Sunburst anthias, fathead anthias / Serranocirrhitus latus',
    'Deepwater anthias, borbonius anthias / Odontanthias, Odontanthias borbonius, Tosanoides',
  ]),
];
