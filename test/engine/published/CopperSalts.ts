import type { PublishedTable } from './publishedTable.js';

/** Derived from Cu 63.546 (seen) and H 1.008, O 15.999, S 32.06 (from memory). */
export const copperSaltCheck: PublishedTable = {
  source: { key: 'IUPAC1997', at: 'Cu; with CIAAW for H, O and S; derived' },
  basis: 'molar mass g/mol; copper as a mass fraction of the salt',
  columns: ['waters of crystal [1]', 'molar mass [g/mol]', 'copper fraction [1]'],
  rows: [
    ['5', '249.677', '0.254513'],
    ['0', '159.602', '0.398153'],
  ],
  misprints: [],
};

/** Worked from the same masses, derived. */
export const copperDoseCheck: PublishedTable = {
  source: { key: 'IUPAC1997', at: 'worked doses, derived' },
  basis: 'net litres to 0.20 mg/L as Cu',
  columns: ['volume [L]', 'level [mg Cu/L]', 'copper [mg]', 'pentahydrate [mg]'],
  rows: [
    ['100', '0.20', '20.0', '78.58'],
    // 50 US gal = 189.2705892 L
    ['189.2705892', '0.20', '37.854', '148.73'],
  ],
  misprints: [],
};

/** 100 L to 0.20 mg/L with the anhydrous salt. [mg], derived */
export const anhydrousDosePrinted = '50.23';

/** A dose of 0.4 mg/L printed as "CuSO4", in mg/L Cu. Derived. */
export const unsaidHydrateCheck: PublishedTable = {
  source: { key: 'IUPAC1997', at: 'both readings of a dose whose hydrate is unsaid, derived' },
  basis: 'mg/L salt in, mg/L Cu out',
  columns: ['salt [mg/L]', 'anhydrous [mg Cu/L]', 'pentahydrate [mg Cu/L]'],
  rows: [['0.4', '0.159', '0.102']],
  misprints: [],
};
