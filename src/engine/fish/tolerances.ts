import type { ToleranceEntry } from './toleranceEntry.js';
import { angelfish } from './tolerances/angelfish.js';
import { anthias } from './tolerances/anthias.js';
import { butterflyfish } from './tolerances/butterflyfish.js';
import { clownfishAndDamsels } from './tolerances/clownfishAndDamsels.js';
import { dragonets } from './tolerances/dragonets.js';
import { eels } from './tolerances/eels.js';
import { gobies } from './tolerances/gobies.js';
import { hardyFish } from './tolerances/hardyFish.js';
import { invertebrates } from './tolerances/invertebrates.js';
import { littleKnownFish } from './tolerances/littleKnownFish.js';
import { puffersAndBoxfish } from './tolerances/puffersAndBoxfish.js';
import { scalelessFish } from './tolerances/scalelessFish.js';
import { seahorsesAndPipefish } from './tolerances/seahorsesAndPipefish.js';
import { sharksAndRays } from './tolerances/sharksAndRays.js';
import { tangs } from './tolerances/tangs.js';
import { wrasses } from './tolerances/wrasses.js';

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
