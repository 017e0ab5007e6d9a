import type { Course, FilteredLevels } from './filteredLevels.js';
import type { LevelSteps } from './levelSteps.js';
import type { SmoothedLevels } from './smoothedLevels.js';

/** All that a model knows of the level of the full system, from event to event. */
export interface LevelPath {
  readonly course: Course;
  /** Standard deviation of the rate of loss. [1/day] */
  readonly rateSpread: number;
  readonly steps: LevelSteps;
  readonly filtered: FilteredLevels;
  readonly smoothed: SmoothedLevels;
  /** How the smoothed level after each event changes with the rate of loss. [mg/L per 1/day] */
  readonly sensitivity: Float64Array;
}
