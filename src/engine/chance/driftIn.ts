import { copperPerRootDay } from '../units/quantity.js';
import { quantityReader } from '../units/readers/quantityReaders.js';

/** How much a level wanders in a day, written as a level; 0 is a level that stays. */
export const driftIn = quantityReader('level', { min: 0, max: 20 }, copperPerRootDay);
