import { limits } from '../limits/limits.js';
import { hoursPerDay } from '../units/quantity.js';

/** Unless the keeper says otherwise: longer than a long weekend. [days] */
export const usualLongestGapDays = limits.longestGap.value / hoursPerDay;

/** Unless the keeper says otherwise; Colorni (1985) gives 28 + 2. [days] */
export const usualHoldDays = limits.holdDays.value;
