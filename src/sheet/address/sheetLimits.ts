/** How many rows and columns a sheet has: whole columns end here. */
export const sheetLimits = { rows: 1_048_576, columns: 16_384 } as const;
