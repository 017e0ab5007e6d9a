import { toleranceEntries } from '../toleranceEntries.js';

/** Puffers, porcupinefish and boxfish. */
export const puffersAndBoxfish = [
  ...toleranceEntries({ advice: 'caution', reason: 'puffer', source: 'Memory' }, [
    'Puffers, puffer, pufferfish, blowfish / Tetraodontidae, Arothron, Takifugu, Sphoeroides',
    'Dogface puffer, dog face puffer, blackspotted puffer / Arothron nigropunctatus',
    'Stars and stripes puffer, white spotted puffer / Arothron hispidus',
    'Guineafowl puffer, golden puffer, spotted guineafowl puffer / Arothron meleagris',
    'Sharpnose puffers, toby, tobies, sharpnose puffer, blue spotted puffer, blue spotted toby / Canthigaster, Canthigaster solandri, Canthigaster papua',
    'Valentini puffer, saddle puffer, saddled toby, valentini / Canthigaster valentini',
    'Porcupinefish, porcupine puffer, porcupine, spiny puffer, balloonfish, burrfish / Diodontidae, Diodon, Diodon holocanthus, Diodon hystrix, Chilomycterus',
  ]),
  ...toleranceEntries({ advice: 'avoid', reason: 'boxfish', source: 'Memory' }, [
    'Boxfish, yellow boxfish, cubicus boxfish, spotted boxfish, blue boxfish / Ostraciidae, Ostracion, Ostracion cubicum, Ostracion cubicus, Ostracion meleagris',
    'Cowfish, longhorn cowfish, thornback cowfish / Lactoria, Lactoria cornuta, Lactoria fornasini',
    'Trunkfish / Lactophrys, Lactophrys triqueter',
  ]),
];
