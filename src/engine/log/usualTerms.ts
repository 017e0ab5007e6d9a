/** Unless the keeper says otherwise: longer than a long weekend. Common practice. [days] */
export const usualLongestGapDays = 96 / 24;

/** Unless the keeper says otherwise. 30 days is common practice; Colorni (1985) gives 28 + 2. [days] */
export const usualHoldDays = 30;
