/** Standard deviations to either side that hold 95 % of a normal; from memory. */
export const bandSpreads = 1.96;
