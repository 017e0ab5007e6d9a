import type { Limit } from './limit.js';

// Every number at which a rule, a plan, a gate or a task changes its answer, once. The sentences take their numbers from
// here as well. What a form of copper has (band, aim) stands in `copperForms`, with its own sources. Each limit is a
// constant of its own, so that a bundle keeps its value and drops the words.

// The hold
export const holdDays: Limit = { value: 30, unit: 'days', decides: 'length of a hold, unless the card says otherwise' };
export const longestGap: Limit = {
  value: 96,
  unit: 'h',
  decides: 'an untested stretch that restarts the hold, unless the card says otherwise',
};
export const creditedGap: Limit = { value: 36, unit: 'h', decides: 'how far past the last test a hold is credited' };
export const notedGap: Limit = { value: 36, unit: 'h', decides: 'an untested stretch is noted' };
export const warnedGap: Limit = { value: 72, unit: 'h', decides: 'an untested stretch is a warning' };
export const nearlyHeld: Limit = {
  value: 1,
  unit: 'days',
  decides: 'a hold stopped this much short is only a warning',
};
export const copperOut: Limit = {
  value: 0.1,
  unit: 'of the low limit',
  decides: 'one reading shows that copper was taken out',
};
export const copperLeaving: Limit = {
  value: 0.5,
  unit: 'of the low limit',
  decides: 'later readings show that copper is being taken out',
};
export const dayCountOff: Limit = { value: 1, unit: 'days', decides: 'the keeper’s own count of hold days may be off' };
export const publishedCourse: Limit = {
  value: 21,
  unit: 'days',
  decides: 'a shorter hold is one before a transfer',
  source: 'ZecHadfieldHungerford2021',
};
export const shortCourse: Limit = {
  value: 14,
  unit: 'days',
  decides: 'a shorter course is a short one',
  source: 'ZecHadfieldHungerford2021',
};

// A move before the hold is over
export const transferDays: Limit = {
  value: 14,
  unit: 'days',
  decides: 'hold days before a fish may move to observation',
};
export const transferGap: Limit = {
  value: 48,
  unit: 'h',
  decides: 'longest untested stretch of the days before a move',
};
export const quietDays: Limit = {
  value: 7,
  unit: 'days',
  decides: 'days without signs or deaths before a fish goes anywhere',
};

// Above the band
export const farOverTop: Limit = {
  value: 1.1,
  unit: 'of the top',
  decides: 'a reading above the band is a danger at once',
};
export const signBeside: Limit = {
  value: 1,
  unit: 'days',
  decides: 'a sign this close to a high reading makes it a danger',
};

// Raising and dosing
export const raiseFrom: Limit = { value: 0.1, unit: 'of the low limit', decides: 'a raise starts below this' };
export const raiseHours: Limit = { value: 24, unit: 'h', decides: 'a raise into the band is too fast' };
export const gradualDays: Limit = { value: 4, unit: 'days', decides: 'days of a gradual raise' };
export const sensitiveDays: Limit = { value: 7, unit: 'days', decides: 'days of a raise for sensitive fish' };
export const urgentDays: Limit = { value: 1, unit: 'days', decides: 'days of an urgent raise' };
export const dosesADay: Limit = { value: 5, unit: 'doses', decides: 'doses in a day of a raise' };
export const urgentDosesADay: Limit = { value: 4, unit: 'doses', decides: 'doses in a day of an urgent raise' };
export const dosingDay: Limit = { value: 12, unit: 'h', decides: 'the part of a day in which people dose' };
export const mostPerDose: Limit = { value: 0.25, unit: 'of the aim', decides: 'the most one dose raises' };
export const urgentMostPerDose: Limit = {
  value: 0.5,
  unit: 'of the aim',
  decides: 'the most one dose raises when urgent',
};
export const testDecides: Limit = {
  value: 0.8,
  unit: 'of the aim',
  decides: 'from here on the test decides, not the plan',
};
export const planOff: Limit = { value: 0.15, unit: 'of what is expected', decides: 'a raise off by more is stopped' };
export const syringeStep: Limit = { value: 0.1, unit: 'mL', decides: 'doses are measured to this' };
export const doseTestAge: Limit = { value: 25, unit: 'h', decides: 'an older test is none for a dose' };
export const doseDayGap: Limit = { value: 8, unit: 'h', decides: 'doses further apart are not of one day' };
export const doubleDose: Limit = { value: 3, unit: 'h', decides: 'two doses closer together may be one' };
export const plannedGapLeast: Limit = { value: 2.5, unit: 'h', decides: 'doses of a plan are at least this far apart' };
export const plannedGapMost: Limit = { value: 4.5, unit: 'h', decides: 'doses of a plan are at most this far apart' };
export const plannedDoseOff: Limit = {
  value: 0.06,
  unit: 'of the dose',
  decides: 'doses of a plan are equal to within this, and a syringe’s step',
};
export const evenGapOff: Limit = { value: 3, unit: 'min', decides: 'four doses at even times are a plan’s' };
export const evenGapLeast: Limit = { value: 1, unit: 'h', decides: 'closer doses are no plan’s, however even' };
export const twiceApart: Limit = { value: 2, unit: 'SD', decides: 'the next reading separates two doses from one' };

// What to do now
export const mixing: Limit = { value: 2, unit: 'h', decides: 'a dose is mixed in' };
export const testAgeHolding: Limit = {
  value: 36,
  unit: 'h',
  decides: 'nothing is computed on an older test in the hold',
};
export const testAgeRaising: Limit = {
  value: 12,
  unit: 'h',
  decides: 'nothing is computed on an older test while raising',
};
export const testAgeUrgent: Limit = {
  value: 6,
  unit: 'h',
  decides: 'nothing is computed on an older test in an urgent raise',
};
export const usualTest: Limit = { value: 24, unit: 'h', decides: 'the next test is due' };
export const testsADayRaising: Limit = { value: 2, unit: 'tests', decides: 'tests in a day while raising' };
export const testsADayUrgent: Limit = { value: 4, unit: 'tests', decides: 'tests in a day of an urgent raise' };
export const spareTests: Limit = { value: 0.1, unit: 'of the tests', decides: 'tests to have spare' };

// After the hold
export const copperGone: Limit = { value: 0.02, unit: 'mg/L', decides: 'a reading up to this shows no copper' };
export const goneBound: Limit = { value: 0.1, unit: 'mg/L', decides: 'a "less than" up to this shows no copper' };
export const firstTestOut: Limit = {
  value: 48,
  unit: 'h',
  decides: 'first test after the last change that took copper out',
};
export const secondTestOut: Limit = {
  value: 168,
  unit: 'h',
  decides: 'second test after the last change that took copper out',
};
export const observeEarliest: Limit = { value: 14, unit: 'days', decides: 'observation at the earliest' };
export const observeAdvised: Limit = {
  value: 28,
  unit: 'days',
  decides: 'observation as advised, or after a low chelated hold',
};
export const lowChelatedHold: Limit = {
  value: 2.1,
  unit: 'mg/L',
  decides: 'a chelated hold with a lower median was run low',
};
export const chelatedFrom: Limit = {
  value: 1.5,
  unit: 'mg/L',
  decides: 'a card without a form is chelated from this low limit on',
};
export const fallowDays: Limit = { value: 76, unit: 'days', decides: 'a display stays without fish' };
export const fallowWarmth: Limit = { value: 24, unit: '°C', decides: 'a display stays without fish at this or warmer' };

// Flukes
export const hatchingFirst: Limit = {
  value: 5,
  unit: 'days',
  decides: 'the first eggs of flukes hatch',
  source: 'BondadReantasoEtAl1995',
};
export const hatchingLast: Limit = {
  value: 6,
  unit: 'days',
  decides: 'most eggs of flukes have hatched',
  source: 'BondadReantasoEtAl1995',
};
export const flukeMaturity: Limit = {
  value: 10,
  unit: 'days',
  decides: 'flukes lay eggs at the earliest',
  source: 'BondadReantasoEtAl1995',
};
export const bathDay: Limit = {
  value: 0.5,
  unit: 'days',
  decides: 'a bath at another time of day is still of that day',
};

// Fish
export const deathsADay: Limit = { value: 3, unit: 'fish', decides: 'deaths within the hours below are a danger' };
export const deathsOfLot: Limit = {
  value: 0.1,
  unit: 'of the lot',
  decides: 'deaths within the hours below are a danger',
};
export const deathHours: Limit = { value: 24, unit: 'h', decides: 'deaths are counted together' };
export const settling: Limit = { value: 1, unit: 'days', decides: 'not eating this soon after arrival is no sign' };
export const clearDays: Limit = {
  value: 3,
  unit: 'days',
  decides: 'a sign after so many clear days is a second episode',
};
export const settledIn: Limit = {
  value: 48,
  unit: 'h',
  decides: 'a fish has been in long enough for its signs to speak of copper',
};

// Water
export const salinityWarning: Limit = {
  value: 25,
  unit: 'g/kg',
  decides: 'copper in thinner water is a warning',
  source: 'ZecHadfieldHungerford2021',
};
export const salinityDanger: Limit = {
  value: 20,
  unit: 'g/kg',
  decides: 'copper in thinner water is a danger',
  source: 'Memory',
};
export const salinityWritten: Limit = {
  value: 1,
  unit: 'g/kg',
  decides: 'a smaller number is no salinity of sea water',
};
export const ammoniaNote: Limit = { value: 0.02, unit: 'mg NH3/L', decides: 'un-ionised ammonia is noted' };
export const ammoniaWarning: Limit = { value: 0.05, unit: 'mg NH3/L', decides: 'un-ionised ammonia is a warning' };
export const ammoniaDanger: Limit = { value: 0.1, unit: 'mg NH3/L', decides: 'un-ionised ammonia is a danger' };
export const waterTestAge: Limit = {
  value: 24,
  unit: 'h',
  decides: 'pH, temperature and salinity speak for an ammonia test',
};
export const saltiest: Limit = { value: 42, unit: 'g/kg', decides: 'ammonia in saltier water is not judged' };
export const copperTrace: Limit = {
  value: 0.25,
  unit: 'of the low limit',
  decides: 'a lower reading is no copper to speak of',
};

// The meter and the level
export const meterLeast: Limit = {
  value: 0.01,
  unit: 'mg/L',
  decides: 'least error of a meter that is not on the card',
};
export const meterOfAim: Limit = {
  value: 40,
  unit: 'parts of the aim',
  decides: 'one of them is the error of a meter that is not on the card',
};
export const drift: Limit = { value: 0.01, unit: 'of the low limit', decides: 'how far a level wanders in a day' };
export const shownChance: Limit = {
  value: 0.95,
  unit: 'chance',
  decides: 'a reading shows that the level is at the limit',
};
export const lossSulfate: Limit = { value: 0.1, unit: 'of a day’s level', decides: 'usual loss of sulfate copper' };
export const lossAmine: Limit = {
  value: 0.02,
  unit: 'of a day’s level',
  decides: 'usual loss of amine copper, or of an unknown form',
};
export const lossChelated: Limit = { value: 0.005, unit: 'of a day’s level', decides: 'usual loss of chelated copper' };

// Readings as they are written
export const readingsOnLimit: Limit = {
  value: 3,
  unit: 'readings',
  decides: 'readings in a row on the limit are a warning',
};
export const wrongFormReadings: Limit = {
  value: 3,
  unit: 'readings',
  decides: 'readings in a row of another form are a danger',
};
export const wrongFormOver: Limit = {
  value: 3,
  unit: 'of the top',
  decides: 'readings above this belong to another form',
};
export const wrongFormUnder: Limit = {
  value: 1 / 3,
  unit: 'of the low limit',
  decides: 'readings below this belong to another form',
};
export const wrongFormTrace: Limit = {
  value: 0.1,
  unit: 'of the low limit',
  decides: 'below this part of a third of it there is no copper',
};
export const raiseOver: Limit = { value: 36, unit: 'h', decides: 'a raise is over so long after its last dose' };
export const stillRising: Limit = {
  value: 1.25,
  unit: 'of the level',
  decides: 'a level that rose by this in those hours still rises',
};
export const formFits: Limit = {
  value: 0.2,
  unit: 'of the level',
  decides: 'readings fit a form this close to its band',
};

// What is likelier than not (from a trial on simulated logs)
export const gate: Limit = { value: 5, unit: 'SD', decides: 'a reading this far off does not fit' };
export const strayOff: Limit = { value: 3, unit: 'SD', decides: 'a reading in a named row is itself the slip' };
export const slipFits: Limit = { value: 3.5, unit: 'SD', decides: 'a corrected reading fits' };
export const digitsNearer: Limit = {
  value: 1 / 3,
  unit: 'of the error',
  decides: 'two digits swapped bring a reading this near',
};
export const slipSpread: Limit = {
  value: 0.03,
  unit: 'of what is expected',
  decides: 'least spread when a point is judged',
};
export const swapFits: Limit = { value: 3.5, unit: 'SD', decides: 'a swapped reading fits' };
export const swapLikelier: Limit = { value: 20, unit: '−2·ln of a ratio', decides: 'two readings are swapped' };
export const swapLooked: Limit = { value: 1.5, unit: 'SD', decides: 'a reading is looked at for a swap' };
export const otherBand: Limit = { value: 2, unit: 'SD', decides: 'a reading this close to a band is of it' };
export const dipOfError: Limit = { value: 0.5, unit: 'SD', decides: 'a fall between two tests is a dip' };

// Changes of water, absorbers, top-off
export const smallestFall: Limit = {
  value: 0.02,
  unit: 'of the low limit',
  decides: 'a smaller fall by a change is no disturbance',
};
export const levelToKeep: Limit = {
  value: 0.5,
  unit: 'of the low limit',
  decides: 'below this there is no level to keep',
};
export const madeUp: Limit = { value: 0.7, unit: 'of the fall', decides: 'a dose in the row makes up for a change' };
export const matchedApart: Limit = {
  value: 3,
  unit: 'SD',
  decides: 'the next reading separates matched from unmatched',
};
export const matchedDenied: Limit = { value: 4, unit: 'SD', decides: 'the word "matched" is not believed' };
export const loweringChanges: Limit = {
  value: 2,
  unit: 'changes',
  decides: 'so many changes after the last reading in the band take copper out',
};
export const absorberDays: Limit = { value: 14, unit: 'days', decides: 'the loss after an absorber is watched' };
export const absorberSure: Limit = { value: 1.6, unit: 'SD', decides: 'a loss is above the usual' };
export const topOffSure: Limit = { value: 3.5, unit: 'SD', decides: 'a rise by top-off is sure' };
export const topOffPart: Limit = {
  value: 0.3,
  unit: 'of the aim',
  decides: 'copper in the top-off is enough to matter',
};
export const topOffs: Limit = { value: 3, unit: 'top-offs', decides: 'fewest top-offs that show copper in them' };
