import { references, type ReferenceKey } from '../references/references.js';

export type LimitUnit =
  | 'days'
  | 'h'
  | 'min'
  | 'mg/L'
  | 'mg NH3/L'
  | 'g/kg'
  | 'mL'
  | '°C'
  | 'of the low limit'
  | 'of the top'
  | 'of the aim'
  | 'parts of the aim'
  | 'of the level'
  | 'of the lot'
  | 'of the tests'
  | 'of the dose'
  | 'of the fall'
  | 'of a day’s level'
  | 'of the error'
  | 'of what is expected'
  | 'fish'
  | 'readings'
  | 'doses'
  | 'tests'
  | 'changes'
  | 'top-offs'
  | 'SD'
  | '−2·ln of a ratio'
  | 'chance';

/** A number at which an answer changes. */
export interface Limit {
  readonly value: number;
  readonly unit: LimitUnit;
  /** What it decides, in a few words. */
  readonly decides: string;
  readonly source: ReferenceKey;
}

/** How far a limit is known: published, derived from something published, common practice, or memory. */
export function limitStatus({ source }: Limit): 'published' | 'derived' | 'practice' | 'memory' {
  const { status } = references[source];
  return status === 'seen' || status === 'copy' ? 'published' : status;
}

function limit(value: number, unit: LimitUnit, decides: string, source: ReferenceKey = 'Practice'): Limit {
  return { value, unit, decides, source };
}

/**
 * Every number at which a rule, a plan, a gate or a task changes its answer, once. The sentences take their numbers from
 * here as well. What a form of copper has (band, aim) stands in `copperForms`, with its own sources.
 */
export const limits = {
  // The hold
  holdDays: limit(30, 'days', 'length of a hold, unless the card says otherwise'),
  longestGap: limit(96, 'h', 'an untested stretch that restarts the hold, unless the card says otherwise'),
  creditedGap: limit(36, 'h', 'how far past the last test a hold is credited'),
  notedGap: limit(36, 'h', 'an untested stretch is noted'),
  warnedGap: limit(72, 'h', 'an untested stretch is a warning'),
  nearlyHeld: limit(1, 'days', 'a hold stopped this much short is only a warning'),
  copperOut: limit(0.1, 'of the low limit', 'one reading shows that copper was taken out'),
  copperLeaving: limit(0.5, 'of the low limit', 'later readings show that copper is being taken out'),
  dayCountOff: limit(1, 'days', 'the keeper’s own count of hold days may be off'),
  publishedCourse: limit(21, 'days', 'a shorter hold is one before a transfer', 'ZecHadfieldHungerford2021'),
  shortCourse: limit(14, 'days', 'a shorter course is a short one', 'ZecHadfieldHungerford2021'),
  // A move before the hold is over
  transferDays: limit(14, 'days', 'hold days before a fish may move to observation'),
  transferGap: limit(48, 'h', 'longest untested stretch of the days before a move'),
  quietDays: limit(7, 'days', 'days without signs or deaths before a fish goes anywhere'),
  // Above the band
  farOverTop: limit(1.1, 'of the top', 'a reading above the band is a danger at once'),
  signBeside: limit(1, 'days', 'a sign this close to a high reading makes it a danger'),
  // Raising and dosing
  raiseFrom: limit(0.1, 'of the low limit', 'a raise starts below this'),
  raiseHours: limit(24, 'h', 'a raise into the band is too fast'),
  gradualDays: limit(4, 'days', 'days of a gradual raise'),
  sensitiveDays: limit(7, 'days', 'days of a raise for sensitive fish'),
  urgentDays: limit(1, 'days', 'days of an urgent raise'),
  dosesADay: limit(5, 'doses', 'doses in a day of a raise'),
  urgentDosesADay: limit(4, 'doses', 'doses in a day of an urgent raise'),
  dosingDay: limit(12, 'h', 'the part of a day in which people dose'),
  mostPerDose: limit(0.25, 'of the aim', 'the most one dose raises'),
  urgentMostPerDose: limit(0.5, 'of the aim', 'the most one dose raises when urgent'),
  testDecides: limit(0.8, 'of the aim', 'from here on the test decides, not the plan'),
  planOff: limit(0.15, 'of what is expected', 'a raise off by more is stopped'),
  syringeStep: limit(0.1, 'mL', 'doses are measured to this'),
  doseTestAge: limit(25, 'h', 'an older test is none for a dose'),
  doseDayGap: limit(8, 'h', 'doses further apart are not of one day'),
  doubleDose: limit(3, 'h', 'two doses closer together may be one'),
  plannedGapLeast: limit(2.5, 'h', 'doses of a plan are at least this far apart'),
  plannedGapMost: limit(4.5, 'h', 'doses of a plan are at most this far apart'),
  plannedDoseOff: limit(0.06, 'of the dose', 'doses of a plan are equal to within this, and a syringe’s step'),
  evenGapOff: limit(3, 'min', 'four doses at even times are a plan’s'),
  evenGapLeast: limit(1, 'h', 'closer doses are no plan’s, however even'),
  twiceApart: limit(2, 'SD', 'the next reading separates two doses from one'),
  // What to do now
  mixing: limit(2, 'h', 'a dose is mixed in'),
  testAgeHolding: limit(36, 'h', 'nothing is computed on an older test in the hold'),
  testAgeRaising: limit(12, 'h', 'nothing is computed on an older test while raising'),
  testAgeUrgent: limit(6, 'h', 'nothing is computed on an older test in an urgent raise'),
  usualTest: limit(24, 'h', 'the next test is due'),
  testsADayRaising: limit(2, 'tests', 'tests in a day while raising'),
  testsADayUrgent: limit(4, 'tests', 'tests in a day of an urgent raise'),
  spareTests: limit(0.1, 'of the tests', 'tests to have spare'),
  // After the hold
  copperGone: limit(0.02, 'mg/L', 'a reading up to this shows no copper'),
  goneBound: limit(0.1, 'mg/L', 'a "less than" up to this shows no copper'),
  firstTestOut: limit(48, 'h', 'first test after the last change that took copper out'),
  secondTestOut: limit(168, 'h', 'second test after the last change that took copper out'),
  observeEarliest: limit(14, 'days', 'observation at the earliest'),
  observeAdvised: limit(28, 'days', 'observation as advised, or after a low chelated hold'),
  lowChelatedHold: limit(2.1, 'mg/L', 'a chelated hold with a lower median was run low'),
  chelatedFrom: limit(1.5, 'mg/L', 'a card without a form is chelated from this low limit on'),
  fallowDays: limit(76, 'days', 'a display stays without fish'),
  fallowWarmth: limit(24, '°C', 'a display stays without fish at this or warmer'),
  // Flukes
  hatchingFirst: limit(5, 'days', 'the first eggs of flukes hatch', 'BondadReantasoEtAl1995'),
  hatchingLast: limit(6, 'days', 'most eggs of flukes have hatched', 'BondadReantasoEtAl1995'),
  flukeMaturity: limit(10, 'days', 'flukes lay eggs at the earliest', 'BondadReantasoEtAl1995'),
  bathDay: limit(0.5, 'days', 'a bath at another time of day is still of that day'),
  // Fish
  deathsADay: limit(3, 'fish', 'deaths within the hours below are a danger'),
  deathsOfLot: limit(0.1, 'of the lot', 'deaths within the hours below are a danger'),
  deathHours: limit(24, 'h', 'deaths are counted together'),
  settling: limit(1, 'days', 'not eating this soon after arrival is no sign'),
  clearDays: limit(3, 'days', 'a sign after so many clear days is a second episode'),
  settledIn: limit(48, 'h', 'a fish has been in long enough for its signs to speak of copper'),
  // Water
  salinityWarning: limit(25, 'g/kg', 'copper in thinner water is a warning', 'ZecHadfieldHungerford2021'),
  salinityDanger: limit(20, 'g/kg', 'copper in thinner water is a danger', 'Memory'),
  salinityWritten: limit(1, 'g/kg', 'a smaller number is no salinity of sea water'),
  ammoniaNote: limit(0.02, 'mg NH3/L', 'un-ionised ammonia is noted'),
  ammoniaWarning: limit(0.05, 'mg NH3/L', 'un-ionised ammonia is a warning'),
  ammoniaDanger: limit(0.1, 'mg NH3/L', 'un-ionised ammonia is a danger'),
  waterTestAge: limit(24, 'h', 'pH, temperature and salinity speak for an ammonia test'),
  saltiest: limit(42, 'g/kg', 'ammonia in saltier water is not judged'),
  copperTrace: limit(0.25, 'of the low limit', 'a lower reading is no copper to speak of'),
  // The meter and the level
  meterLeast: limit(0.01, 'mg/L', 'least error of a meter that is not on the card'),
  meterOfAim: limit(40, 'parts of the aim', 'one of them is the error of a meter that is not on the card'),
  drift: limit(0.01, 'of the low limit', 'how far a level wanders in a day'),
  shownChance: limit(0.95, 'chance', 'a reading shows that the level is at the limit'),
  lossSulfate: limit(0.1, 'of a day’s level', 'usual loss of sulfate copper'),
  lossAmine: limit(0.02, 'of a day’s level', 'usual loss of amine copper, or of an unknown form'),
  lossChelated: limit(0.005, 'of a day’s level', 'usual loss of chelated copper'),
  // Readings as they are written
  readingsOnLimit: limit(3, 'readings', 'readings in a row on the limit are a warning'),
  wrongFormReadings: limit(3, 'readings', 'readings in a row of another form are a danger'),
  wrongFormOver: limit(3, 'of the top', 'readings above this belong to another form'),
  wrongFormUnder: limit(1 / 3, 'of the low limit', 'readings below this belong to another form'),
  wrongFormTrace: limit(0.1, 'of the low limit', 'below this part of a third of it there is no copper'),
  raiseOver: limit(36, 'h', 'a raise is over so long after its last dose'),
  stillRising: limit(1.25, 'of the level', 'a level that rose by this in those hours still rises'),
  formFits: limit(0.2, 'of the level', 'readings fit a form this close to its band'),
  // What is likelier than not (from a trial on simulated logs)
  gate: limit(5, 'SD', 'a reading this far off does not fit'),
  strayOff: limit(3, 'SD', 'a reading in a named row is itself the slip'),
  slipFits: limit(3.5, 'SD', 'a corrected reading fits'),
  digitsNearer: limit(1 / 3, 'of the error', 'two digits swapped bring a reading this near'),
  slipSpread: limit(0.03, 'of what is expected', 'least spread when a point is judged'),
  swapFits: limit(3.5, 'SD', 'a swapped reading fits'),
  swapLikelier: limit(20, '−2·ln of a ratio', 'two readings are swapped'),
  swapLooked: limit(1.5, 'SD', 'a reading is looked at for a swap'),
  otherBand: limit(2, 'SD', 'a reading this close to a band is of it'),
  dipOfError: limit(0.5, 'SD', 'a fall between two tests is a dip'),
  // Changes of water, absorbers, top-off
  smallestFall: limit(0.02, 'of the low limit', 'a smaller fall by a change is no disturbance'),
  levelToKeep: limit(0.5, 'of the low limit', 'below this there is no level to keep'),
  madeUp: limit(0.7, 'of the fall', 'a dose in the row makes up for a change'),
  matchedApart: limit(3, 'SD', 'the next reading separates matched from unmatched'),
  matchedDenied: limit(4, 'SD', 'the word "matched" is not believed'),
  loweringChanges: limit(2, 'changes', 'so many changes after the last reading in the band take copper out'),
  absorberDays: limit(14, 'days', 'the loss after an absorber is watched'),
  absorberSure: limit(1.6, 'SD', 'a loss is above the usual'),
  topOffSure: limit(3.5, 'SD', 'a rise by top-off is sure'),
  topOffPart: limit(0.3, 'of the aim', 'copper in the top-off is enough to matter'),
  topOffs: limit(3, 'top-offs', 'fewest top-offs that show copper in them'),
} as const satisfies Readonly<Record<string, Limit>>;

export type LimitName = keyof typeof limits;
