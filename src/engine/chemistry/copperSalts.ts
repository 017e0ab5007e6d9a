/** Copper sulfate, CuSO4·nH2O, by its waters of crystal. */
export const copperSalts = {
  pentahydrate: { waters: 5 }, // [ICSC1416, name and formula], seen
  anhydrous: { waters: 0 }, // [Memory, formula without water]
} as const;

export type SaltName = keyof typeof copperSalts;

/** In the order in which a message lists them. */
export const saltNames = ['pentahydrate', 'anhydrous'] as const satisfies readonly SaltName[];
