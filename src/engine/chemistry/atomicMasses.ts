/** Atomic masses. [g/mol] */
export const atomicMasses = {
  Cu: 63.546, // [IUPAC1997, Cu], seen
  H: 1.008, // [CIAAW, H], from memory
  N: 14.007, // [CIAAW, N], from memory
  O: 15.999, // [CIAAW, O], from memory
  S: 32.06, // [CIAAW, S], from memory
} as const;
