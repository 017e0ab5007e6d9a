import { fishSayings } from './sayings/fishSayings.js';
import { mishapSayings } from './sayings/mishapSayings.js';
import type { Saying } from './sayings/saying.js';
import { signSayings } from './sayings/signSayings.js';
import { thingSayings } from './sayings/thingSayings.js';
import { waterSayings } from './sayings/waterSayings.js';

/** Every way of saying something; of two that share words the first counts. */
export const sayings: readonly Saying[] = [
  ...fishSayings,
  ...thingSayings,
  ...waterSayings,
  ...mishapSayings,
  ...signSayings,
];
