/** Every source the software cites, written once. `status` says how far the project has read it. */
export interface Reference {
  readonly cite: string;
  readonly where: string;
  /** seen: read in a stored copy; copy: read in somebody else's reproduction; derived; memory: not read; practice: no published source. */
  readonly status: 'seen' | 'copy' | 'derived' | 'memory' | 'practice';
}

export const references = {
  ZecHadfieldHungerford2021: {
    cite: 'Zec, Hadfield, Hungerford (2021)',
    where: 'J. Zoo Wildl. Med. 52(1), doi:10.1638/2020-0114, abstract',
    status: 'seen',
  },
  HadfieldClayton2011: {
    cite: 'Hadfield, Clayton (2011)',
    where: 'J. Zoo Wildl. Med. 42(4):641-650, doi:10.1638/2011-0034.1',
    status: 'seen',
  },
  AngelEtAl2021: {
    cite: 'Angel et al. (2021)',
    where: 'Environ. Chem. 18(1):1-11, doi:10.1071/EN20133',
    status: 'seen',
  },
  FishHealthPage: { cite: 'UK fish-health information page on copper sulphate', where: 'undated', status: 'seen' },
  HawaiiExtension: {
    cite: 'Hawaii aquaculture extension text',
    where: 'copper sulfate and citric acid stock',
    status: 'copy',
  },
  YanongFA165: {
    cite: 'Yanong, UF/IFAS circular FA165',
    where: 'opening seen, its numbers from memory',
    status: 'memory',
  },
  IUPAC1997: { cite: 'IUPAC atomic weights (1997)', where: 'Cu 63.546(3)', status: 'seen' },
  CIAAW: { cite: 'CIAAW abridged atomic weights', where: 'H, N, O, S', status: 'memory' },
  KhooEtAl1977: {
    cite: 'Khoo, Culberson, Bates (1977)',
    where: 'J. Solution Chem. 6:281, doi:10.1007/BF00645459, abstract',
    status: 'seen',
  },
  BowerBidwell1978: { cite: 'Bower, Bidwell (1978)', where: 'J. Fish. Res. Board Can. 35:1012-1016', status: 'copy' },
  Whitfield1974: { cite: 'Whitfield (1974)', where: 'form used by Bower and Bidwell (1978)', status: 'copy' },
  EPA1989: { cite: 'US EPA (1989)', where: 'EPA 440/5-88-004', status: 'copy' },
  BellEtAl2007: { cite: 'Bell et al. (2007, corrected 2008)', where: 'Environ. Chem. 4:183-186', status: 'copy' },
  EmersonEtAl1975: { cite: 'Emerson et al. (1975)', where: 'fresh water', status: 'copy' },
  FofonoffMillard1983: {
    cite: 'Fofonoff, Millard (1983)',
    where: 'UNESCO Technical Papers in Marine Science 44, p. 19',
    status: 'seen',
  },
  MilleroPoisson1981: {
    cite: 'Millero, Poisson (1981)',
    where: 'Deep-Sea Res. 28A:625-629, the equation that Fofonoff and Millard print',
    status: 'memory',
  },
  Colorni1985: { cite: 'Colorni (1985)', where: 'Dis. Aquat. Org. 1:19-22, doi:10.3354/dao001019', status: 'seen' },
  CheungEtAl1979: { cite: 'Cheung et al. (1979)', where: 'J. Fish Dis. 2:93-97', status: 'seen' },
  ColorniBurgess1997: { cite: 'Colorni, Burgess (1997)', where: 'the 72-day tail', status: 'memory' },
  BondadReantasoEtAl1995: {
    cite: 'Bondad-Reantaso et al. (1995)',
    where: 'Fish Pathol. 30(3):227-231, abstract, on Neobenedenia girellae at 25 °C',
    status: 'seen',
  },
  ThomasEtAl2016: { cite: 'Thomas et al. (2016)', where: 'PeerJ 4:e1857', status: 'seen' },
  AbramowitzStegun1964: {
    cite: 'Abramowitz, Stegun (1964)',
    where: 'Handbook of Mathematical Functions, 26.7.3 and 26.7.4',
    status: 'memory',
  },
  ZecHadfieldHungerford2017: {
    cite: 'Zec, Hadfield, Hungerford (2017)',
    where: 'IAAAM conference, abstract',
    status: 'seen',
  },
  HobbyPress2008: {
    cite: 'hobby press (October 2008)',
    where: 'copper and flame angelfish, 5 and 8 fish a level; orchid dottyback, 3 pairs; abstract',
    status: 'seen',
  },
  NistNorris: { cite: 'NIST StRD', where: 'Norris', status: 'copy' },
  StandardMethods3500Cu: {
    cite: 'Kit sheet, bicinchoninate adaptation of Standard Methods 3500-Cu',
    where: 'range and limits',
    status: 'seen',
  },
  ICSC1416: { cite: 'ILO/WHO ICSC 1416', where: 'copper sulfate pentahydrate', status: 'seen' },
  CFR131: { cite: '40 CFR 131.38', where: 'salt-water copper criteria', status: 'seen' },
  Handbook44: { cite: 'NIST Handbook 44', where: 'appendix C, the gallon of 231 cubic inches', status: 'memory' },
  UKWeightsMeasures1985: {
    cite: 'UK Weights and Measures Act 1985',
    where: 'the gallon of 4.54609 L',
    status: 'memory',
  },
  Serials1900: { cite: 'Date serials of spreadsheets', where: '1900 system, 1970-01-01 is 25569', status: 'derived' },
  Arithmetic: { cite: 'worked by hand', where: 'arithmetic', status: 'derived' },
  Practice: { cite: 'common practice', where: 'no published source', status: 'practice' },
  Memory: { cite: 'from memory', where: 'unchecked', status: 'memory' },
} as const satisfies Record<string, Reference>;

export type ReferenceKey = keyof typeof references;
