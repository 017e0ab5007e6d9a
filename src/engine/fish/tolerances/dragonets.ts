import { toleranceEntries } from '../toleranceEntries.js';

/** Mandarins and dragonets. */
export const dragonets = toleranceEntries({ advice: 'avoid', reason: 'dragonet', source: 'Memory' }, [
  'Mandarin dragonet, mandarin, mandarin goby, mandarinfish, green mandarin, blue mandarin, striped mandarin / Synchiropus splendidus',
  'Spotted mandarin, target mandarin, psychedelic mandarin, picturesque dragonet / Synchiropus picturatus',
  'Scooter dragonet, scooter blenny, scooter, ocellated dragonet / Synchiropus ocellatus',
  'Ruby red dragonet, red scooter, red scooter blenny, red scooter dragonet, starry dragonet, starry blenny dragonet / Synchiropus sycorax, Synchiropus stellatus',
  'Dragonets, dragonet, finger dragonet / Callionymidae, Callionymus, Synchiropus, Dactylopus',
]);
