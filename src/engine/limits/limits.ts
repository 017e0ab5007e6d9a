import type { Limit } from './limit.js';

// Every number at which a rule, a plan, a gate or a task changes its answer, once. The sentences take their numbers from
// here as well. What a form of copper has (band, aim) stands in `copperForms`, with its own sources. Each limit is a
// constant of its own, so that a bundle keeps its value and drops the words.

// The hold
export const holdDays: Limit = { of: 'hold', value: 30, unit: 'days', decides: 'length of a hold' };
export const longestGap: Limit = { of: 'hold', value: 96, unit: 'h', decides: 'a longer untested stretch restarts the hold' };
export const creditedGap: Limit = { of: 'hold', value: 36, unit: 'h', decides: 'how far past the last test a hold is credited' };
export const notedGap: Limit = { of: 'hold', value: 36, unit: 'h', decides: 'an untested stretch is noted' };
export const warnedGap: Limit = { of: 'hold', value: 72, unit: 'h', decides: 'an untested stretch is a warning' };
export const nearlyHeld: Limit = { of: 'hold', value: 1, unit: 'days', decides: 'stopped this little short is only a warning' };
export const copperOut: Limit = { of: 'hold', value: 0.1, unit: 'of the low limit', decides: 'one reading shows copper out' };
export const copperLeaving: Limit = { of: 'hold', value: 0.5, unit: 'of the low limit', decides: 'later readings show copper leaving' };
export const dayCountOff: Limit = { of: 'hold', value: 1, unit: 'days', decides: 'the keeper’s own day count may be off' };
export const publishedCourse: Limit = { of: 'hold', value: 21, unit: 'days', decides: 'a shorter hold is one before a move', source: 'ZecHadfieldHungerford2021' };
export const shortCourse: Limit = { of: 'hold', value: 14, unit: 'days', decides: 'a shorter course is a short one', source: 'ZecHadfieldHungerford2021' };

// A move before the hold is over
export const transferDays: Limit = { of: 'move', value: 14, unit: 'days', decides: 'hold days before a move' };
export const transferGap: Limit = { of: 'move', value: 48, unit: 'h', decides: 'longest untested stretch before a move' };
export const quietDays: Limit = { of: 'move', value: 7, unit: 'days', decides: 'without signs or deaths before a move' };

// Above the band
export const farOverTop: Limit = { of: 'above', value: 1.1, unit: 'of the top', decides: 'a reading above the band is a danger at once' };
export const signBeside: Limit = { of: 'above', value: 1, unit: 'days', decides: 'a sign this near makes a high reading a danger' };

// Raising and dosing
export const raiseFrom: Limit = { of: 'raise', value: 0.1, unit: 'of the low limit', decides: 'a raise starts below this' };
export const raiseHours: Limit = { of: 'raise', value: 24, unit: 'h', decides: 'a raise into the band is too fast' };
export const gradualDays: Limit = { of: 'raise', value: 4, unit: 'days', decides: 'days of a gradual raise' };
export const sensitiveDays: Limit = { of: 'raise', value: 7, unit: 'days', decides: 'days of a raise for sensitive fish' };
export const urgentDays: Limit = { of: 'raise', value: 1, unit: 'days', decides: 'days of an urgent raise' };
export const dosesADay: Limit = { of: 'raise', value: 5, unit: 'doses', decides: 'doses in a day of a raise' };
export const urgentDosesADay: Limit = { of: 'raise', value: 4, unit: 'doses', decides: 'doses in a day of an urgent raise' };
export const dosingDay: Limit = { of: 'raise', value: 12, unit: 'h', decides: 'the part of a day in which people dose' };
export const mostPerDose: Limit = { of: 'raise', value: 0.25, unit: 'of the aim', decides: 'the most one dose raises' };
export const urgentMostPerDose: Limit = { of: 'raise', value: 0.5, unit: 'of the aim', decides: 'the most one dose raises when urgent' };
export const testDecides: Limit = { of: 'raise', value: 0.8, unit: 'of the aim', decides: 'from here on the test decides, not the plan' };
export const planOff: Limit = { of: 'raise', value: 0.15, unit: 'of the expected', decides: 'a raise off by more is stopped' };
export const syringeStep: Limit = { of: 'raise', value: 0.1, unit: 'mL', decides: 'doses are measured to this' };
export const doseTestAge: Limit = { of: 'raise', value: 25, unit: 'h', decides: 'an older test is none for a dose' };
export const doseDayGap: Limit = { of: 'raise', value: 8, unit: 'h', decides: 'doses further apart are not of one day' };
export const doubleDose: Limit = { of: 'raise', value: 3, unit: 'h', decides: 'two doses closer together may be one' };
export const plannedGapLeast: Limit = { of: 'raise', value: 2.5, unit: 'h', decides: 'doses of a plan are this far apart' };
export const plannedGapMost: Limit = { of: 'raise', value: 4.5, unit: 'h', decides: 'doses of a plan are no further apart' };
export const plannedDoseOff: Limit = { of: 'raise', value: 0.06, unit: 'of the dose', decides: 'doses of a plan are equal to this' };
export const evenGapOff: Limit = { of: 'raise', value: 3, unit: 'min', decides: 'four doses at even times are a plan’s' };
export const evenGapLeast: Limit = { of: 'raise', value: 1, unit: 'h', decides: 'doses closer than this are not from a plan, even if evenly spaced' };
export const twiceApart: Limit = { of: 'raise', value: 2, unit: 'SD', decides: 'how far apart one dose and two must leave the level for a reading to tell them apart' };

// What to do now
export const mixing: Limit = { of: 'now', value: 2, unit: 'h', decides: 'a dose is mixed in' };
export const testAgeHolding: Limit = { of: 'now', value: 36.5, unit: 'h', decides: 'in the hold an older test is too old' };
export const testAgeRaising: Limit = { of: 'now', value: 12.5, unit: 'h', decides: 'while raising an older test is too old' };
export const testAgeUrgent: Limit = { of: 'now', value: 6.5, unit: 'h', decides: 'in an urgent raise an older test is too old' };
export const usualTest: Limit = { of: 'now', value: 24, unit: 'h', decides: 'the next test is due' };
export const testsADayRaising: Limit = { of: 'now', value: 2, unit: 'tests', decides: 'tests in a day while raising' };
export const testsADayUrgent: Limit = { of: 'now', value: 4, unit: 'tests', decides: 'tests in a day of an urgent raise' };
export const spareTests: Limit = { of: 'now', value: 0.1, unit: 'of the tests', decides: 'tests to have spare' };

// The judgement of a moment
export const disbelieved: Limit = { of: 'now', value: 4, unit: 'SD', decides: 'a reading this far off is not believed yet' };
export const settledWithin: Limit = { of: 'now', value: 2, unit: 'of the error', decides: 'the next reading this close settles a doubt' };
export const rationWindow: Limit = { of: 'now', value: 23, unit: 'h', decides: 'what was raised counts against the ration' };
export const dosesADayNow: Limit = { of: 'now', value: 2, unit: 'doses', decides: 'doses in a day, as they are advised one by one' };
export const doseGap: Limit = { of: 'now', value: 3, unit: 'h', decides: 'the next dose at the earliest' };
export const urgentDoseGap: Limit = { of: 'now', value: 6, unit: 'h', decides: 'the next dose at the earliest when urgent' };
export const heldDays: Limit = { of: 'now', value: 7, unit: 'days', decides: 'a level held in them may be gone back to' };
export const heldApart: Limit = { of: 'now', value: 12, unit: 'h', decides: 'two readings this far apart show a level held' };
export const testAfterDose: Limit = { of: 'now', value: 0.05, unit: 'of the aim', decides: 'a larger dose is tested once it is mixed' };
export const farOverNow: Limit = { of: 'now', value: 1.5, unit: 'of the top', decides: 'acted on before it is believed' };
export const mostChange: Limit = { of: 'now', value: 0.5, unit: 'of the volume', decides: 'the most water changed at once' };
export const changeStep: Limit = { of: 'now', value: 0.5, unit: 'L', decides: 'water is measured in steps of this' };
export const eventOpen: Limit = { of: 'now', value: 48, unit: 'h', decides: 'how long an event is open' };
export const overdueAfter: Limit = { of: 'now', value: 24, unit: 'h', decides: 'an open finding is overdue' };
export const intoleranceDays: Limit = { of: 'now', value: 7, unit: 'days', decides: 'the aim stays low after a recovery' };
export const dayBegins: Limit = { of: 'now', value: 7, unit: 'h', decides: 'tests are due at this hour at the earliest' };
export const dayEnds: Limit = { of: 'now', value: 22, unit: 'h', decides: 'tests are due at this hour at the latest' };
export const soonestTest: Limit = { of: 'now', value: 12, unit: 'h', decides: 'the next test in the hold at the earliest' };

// After the hold
export const copperGone: Limit = { of: 'after', value: 0.02, unit: 'mg/L', decides: 'a reading up to this shows no copper' };
export const goneBound: Limit = { of: 'after', value: 0.1, unit: 'mg/L', decides: 'a "less than" up to this shows no copper' };
export const firstTestOut: Limit = { of: 'after', value: 48, unit: 'h', decides: 'first test after copper was taken out' };
export const secondTestOut: Limit = { of: 'after', value: 168, unit: 'h', decides: 'second test after copper was taken out' };
export const observeEarliest: Limit = { of: 'after', value: 14, unit: 'days', decides: 'observation at the earliest' };
export const observeAdvised: Limit = { of: 'after', value: 28, unit: 'days', decides: 'observation, advised or after a low hold' };
export const lowChelatedHold: Limit = { of: 'after', value: 2.1, unit: 'mg/L', decides: 'a lower median of a hold is low' };
export const chelatedFrom: Limit = { of: 'after', value: 1.5, unit: 'mg/L', decides: 'a card without a form is chelated' };
export const fallowDays: Limit = { of: 'after', value: 76, unit: 'days', decides: 'a display stays without fish' };
export const fallowWarmth: Limit = { of: 'after', value: 24, unit: '°C', decides: 'a display stays without fish at this or warmer' };

// Flukes
export const hatchingFirst: Limit = { of: 'flukes', value: 5, unit: 'days', decides: 'the first eggs of flukes hatch', source: 'BondadReantasoEtAl1995' };
export const hatchingLast: Limit = { of: 'flukes', value: 6, unit: 'days', decides: 'most eggs of flukes have hatched', source: 'BondadReantasoEtAl1995' };
export const flukeMaturity: Limit = { of: 'flukes', value: 10, unit: 'days', decides: 'flukes lay eggs at the earliest', source: 'BondadReantasoEtAl1995' };
export const bathDay: Limit = { of: 'flukes', value: 0.5, unit: 'days', decides: 'a bath at another time of day is still of that day' };

// Fish
export const deathsADay: Limit = { of: 'fish', value: 3, unit: 'fish', decides: 'deaths within the hours are a danger' };
export const deathsOfLot: Limit = { of: 'fish', value: 0.1, unit: 'of the lot', decides: 'deaths within the hours are a danger' };
export const deathHours: Limit = { of: 'fish', value: 24, unit: 'h', decides: 'deaths are counted together' };
export const settling: Limit = { of: 'fish', value: 1, unit: 'days', decides: 'not eating this soon after arrival is no sign' };
export const clearDays: Limit = { of: 'fish', value: 3, unit: 'days', decides: 'a sign after so many clear days is a second episode' };
export const settledIn: Limit = { of: 'fish', value: 48, unit: 'h', decides: 'a fish has been in long enough' };

// Water
export const salinityWarning: Limit = { of: 'water', value: 25, unit: 'g/kg', decides: 'copper in thinner water is a warning', source: 'ZecHadfieldHungerford2021' };
export const salinityDanger: Limit = { of: 'water', value: 20, unit: 'g/kg', decides: 'copper in thinner water is a danger', source: 'Memory' };
export const salinityWritten: Limit = { of: 'water', value: 1, unit: 'g/kg', decides: 'a smaller number is no salinity' };
export const ammoniaNote: Limit = { of: 'water', value: 0.02, unit: 'mg NH3/L', decides: 'un-ionised ammonia is noted' };
export const ammoniaWarning: Limit = { of: 'water', value: 0.05, unit: 'mg NH3/L', decides: 'un-ionised ammonia is a warning' };
export const ammoniaDanger: Limit = { of: 'water', value: 0.1, unit: 'mg NH3/L', decides: 'un-ionised ammonia is a danger' };
export const waterTestAge: Limit = { of: 'water', value: 24, unit: 'h', decides: 'pH and the like hold for an ammonia test' };
export const saltiest: Limit = { of: 'water', value: 42, unit: 'g/kg', decides: 'ammonia in saltier water is not judged' };
export const copperTrace: Limit = { of: 'water', value: 0.25, unit: 'of the low limit', decides: 'a lower reading counts as almost no copper' };

// The meter and the level
export const meterLeast: Limit = { of: 'meter', value: 0.01, unit: 'mg/L', decides: 'least error of an unknown meter' };
export const meterOfAim: Limit = { of: 'meter', value: 40, unit: 'parts of the aim', decides: 'an unknown meter is taken to be off by one part' };
export const drift: Limit = { of: 'meter', value: 0.01, unit: 'of the low limit', decides: 'how far a level wanders in a day' };
export const shownChance: Limit = { of: 'meter', value: 0.95, unit: 'chance', decides: 'a reading shows the limit' };
export const lossSulfate: Limit = { of: 'meter', value: 0.1, unit: 'a day', decides: 'usual loss of sulfate copper' };
export const lossAmine: Limit = { of: 'meter', value: 0.02, unit: 'a day', decides: 'usual loss of amine or unknown copper' };
export const lossChelated: Limit = { of: 'meter', value: 0.005, unit: 'a day', decides: 'usual loss of chelated copper' };

// Readings as they are written
export const readingsOnLimit: Limit = { of: 'record', value: 3, unit: 'readings', decides: 'readings in a row on the limit are a warning' };
export const wrongFormReadings: Limit = { of: 'record', value: 3, unit: 'readings', decides: 'readings of another form are a danger' };
export const wrongFormOver: Limit = { of: 'record', value: 3, unit: 'of the top', decides: 'readings above this belong to another form' };
export const wrongFormUnder: Limit = { of: 'record', value: 1 / 3, unit: 'of the low limit', decides: 'readings below this belong to another form' };
export const wrongFormTrace: Limit = { of: 'record', value: 0.1, unit: 'of the low limit', decides: 'a lower reading is no copper' };
export const raiseOver: Limit = { of: 'record', value: 36, unit: 'h', decides: 'a raise is over after its last dose' };
export const stillRising: Limit = { of: 'record', value: 1.25, unit: 'of the level', decides: 'a level that rose by this still rises' };
export const formFits: Limit = { of: 'record', value: 0.2, unit: 'of the level', decides: 'readings fit a form this close to its band' };

// What is likelier than not (from a trial on simulated logs)
export const gate: Limit = { of: 'odds', value: 5, unit: 'SD', decides: 'a reading this far off does not fit' };
export const strayOff: Limit = { of: 'odds', value: 3, unit: 'SD', decides: 'a reading in a named row is the slip' };
export const slipFits: Limit = { of: 'odds', value: 3.5, unit: 'SD', decides: 'a corrected reading fits' };
export const digitsNearer: Limit = { of: 'odds', value: 1 / 3, unit: 'of the error', decides: 'swapped digits bring a reading this near' };
export const slipSpread: Limit = { of: 'odds', value: 0.03, unit: 'of the expected', decides: 'least spread when a point is judged' };
export const swapFits: Limit = { of: 'odds', value: 3.5, unit: 'SD', decides: 'a swapped reading fits' };
export const swapOtherFits: Limit = { of: 'odds', value: 5.25, unit: 'SD', decides: 'the first of two swapped readings fits the second row' };
export const swapLikelier: Limit = { of: 'odds', value: 20, unit: '−2·ln of a ratio', decides: 'two readings are swapped' };
export const swapLooked: Limit = { of: 'odds', value: 1.5, unit: 'SD', decides: 'a reading is looked at for a swap' };
export const otherBand: Limit = { of: 'odds', value: 2, unit: 'SD', decides: 'a reading this close to a band is taken to belong to it' };
export const dipOfError: Limit = { of: 'odds', value: 0.5, unit: 'SD', decides: 'a fall between two tests is a dip' };

// Changes of water, absorbers, top-off
export const smallestFall: Limit = { of: 'change', value: 0.02, unit: 'of the low limit', decides: 'a smaller fall by a change is no disturbance' };
export const levelToKeep: Limit = { of: 'change', value: 0.5, unit: 'of the low limit', decides: 'below this there is no level to keep' };
export const madeUp: Limit = { of: 'change', value: 0.7, unit: 'of the fall', decides: 'a dose in the row makes up for a change' };
export const matchedApart: Limit = { of: 'change', value: 3, unit: 'SD', decides: 'the next reading separates matched from unmatched' };
export const matchedDenied: Limit = { of: 'change', value: 4, unit: 'SD', decides: 'the word "matched" is not believed' };
export const loweringChanges: Limit = { of: 'change', value: 2, unit: 'changes', decides: 'changes after the last good reading take copper out' };
export const absorberDays: Limit = { of: 'change', value: 14, unit: 'days', decides: 'the loss after an absorber is watched' };
export const absorberSure: Limit = { of: 'change', value: 1.6, unit: 'SD', decides: 'a loss is above the usual' };
export const topOffSure: Limit = { of: 'change', value: 3.5, unit: 'SD', decides: 'a rise by top-off is sure' };
export const topOffPart: Limit = { of: 'change', value: 0.3, unit: 'of the aim', decides: 'copper in the top-off is enough to matter' };
export const topOffs: Limit = { of: 'change', value: 3, unit: 'top-offs', decides: 'fewest top-offs that show copper in them' };
