import type { ToleranceEntry } from './toleranceEntry.js';
import { angelfish, butterflyfish, tangs } from './tolerances/largeReefFish.js';
import { anthias, clownfishAndDamsels, gobies, wrasses } from './tolerances/smallReefFish.js';
import {
  dragonets,
  eels,
  puffersAndBoxfish,
  scalelessFish,
  seahorsesAndPipefish,
  sharksAndRays,
} from './tolerances/fishWithoutScales.js';
import { hardyFish, littleKnownFish } from './tolerances/otherFish.js';
import { invertebrates } from './tolerances/invertebrates.js';

/** Every fish and group on the list, one line each. */
export const tolerances: readonly ToleranceEntry[] = [
  ...invertebrates,
  ...sharksAndRays,
  ...seahorsesAndPipefish,
  ...dragonets,
  ...puffersAndBoxfish,
  ...eels,
  ...scalelessFish,
  ...gobies,
  ...angelfish,
  ...butterflyfish,
  ...tangs,
  ...wrasses,
  ...anthias,
  ...clownfishAndDamsels,
  ...hardyFish,
  ...littleKnownFish,
];
