// The engine's front door: shells and cell functions import from here and from nowhere else.
export { isoFromSerial } from '../base/isoFromSerial.js';
export { serialFromDate } from '../base/serialFromDate.js';
export { references, type ReferenceKey } from './references/references.js';
export { isNotYet } from './result/isNotYet.js';
export type { Problem } from './result/problem.js';
export { ok, refuse, type Result } from './result/result.js';
export type { Table, TableCell } from './result/table.js';
export type { Cell } from './units/cell.js';
export {
  celsius,
  centimetres,
  copperMgPerLitre,
  copperMgPerMl,
  copperPerRootDay,
  days,
  fraction,
  hours,
  litres,
  millilitres,
  serialDay,
} from './units/quantity.js';
export { argumentsIn } from './units/readers/argumentsIn.js';
export { choiceIn, confirmIn, wholeNumberIn } from './units/readers/choiceReaders.js';
export { chanceIn, changeIn, changePercentIn, meterPercentIn } from './units/readers/percentReaders.js';
export {
  accuracyIn,
  ammoniaIn,
  ammoniaSettingIn,
  daysIn,
  dosedVolumeIn,
  gapIn,
  hoursIn,
  lengthIn,
  lengthOrNone,
  levelIn,
  levelOr,
  levelSettingIn,
  litresOrNone,
  phIn,
  salinityIn,
  saltMassIn,
  specificGravityIn,
  strengthIn,
  temperatureIn,
  timeIn,
  totalAmmoniaIn,
  volumeIn,
} from './units/readers/quantityReaders.js';
export { named, unlessBlankOrZero, type Reader } from './units/readers/reader.js';
export { labelStrength } from './chemistry/labelStrength.js';
export { saltNames } from './chemistry/molarMass.js';
export { stockGrams } from './chemistry/stockGrams.js';
export { stockStrength } from './chemistry/stockStrength.js';
export { thinnedStock } from './chemistry/thinnedStock.js';
export { netVolume } from './volume/netVolume.js';
export { volumeByDose } from './volume/volumeByDose.js';
export { salinityFromSpecificGravity } from './seawater/salinityFromSpecificGravity.js';
export { specificGravityOfSeawater } from './seawater/specificGravityOfSeawater.js';
export { conditionIn } from './fish/conditionIn.js';
export { fishCount } from './fish/fishCount.js';
export { readFish } from './fish/readFish.js';
export { tolerancesOf } from './fish/tolerance.js';
export { treatmentsFor } from './fish/treatmentsFor.js';
export { copperDose } from './dose/copperDose.js';
export { copperRise } from './dose/copperRise.js';
export { formIn } from './dose/formOf.js';
export { copperForms, type FormName } from './dose/forms.js';
export { paceIn } from './dose/paceIn.js';
export { ramp } from './dose/ramp.js';
export { splitDose } from './dose/splitDose.js';
export { ammoniaChange } from './ammonia/ammoniaChange.js';
export { ammoniaBases, freeAmmonia } from './ammonia/freeAmmonia.js';
export { changeToLower } from './water/changeToLower.js';
export { changesToClear } from './water/changesToClear.js';
export { copperForChange } from './water/copperForChange.js';
export { levelAfterChange } from './water/levelAfterChange.js';
export { levelAfterEvaporation } from './water/levelAfterEvaporation.js';
export { lossRate } from './water/lossRate.js';
export { usualHoldDays, usualLongestGapDays, type Card } from './log/card.js';
export type { CardEntry } from './log/cardRead/cardEntries.js';
export { cardWordsFor, type CardName } from './log/cardRead/cardNames.js';
export { columnKinds, headingKey, type ColumnKind } from './log/headings/columnKinds.js';
export type { RawRange } from './log/parallelRanges.js';
export { readLossReadings } from './log/readLossReadings.js';
export { readingLevel } from './log/readingLevel.js';
export type { Log } from './log/table/log.js';
export { logBySystem, systemKey } from './log/table/logBySystem.js';
export type { LogRange } from './log/table/logRange.js';
export { readLog } from './log/table/readLog.js';
export { eventKinds } from './log/waterEvents.js';
export { levelAt } from './level/levelAt.js';
export { seededNumbers, type SeededNumbers } from './level/seededNumbers.js';
export { simulateTank } from './level/simulateTank.js';
export type { SimulatedRow } from './level/simulatedTreatment.js';
export { bandIn, formBand } from './hold/bandIn.js';
export { holdDays } from './hold/holdDays.js';
export { holdEnds } from './hold/holdEnds.js';
export { readingsAnswer, traceAnswer, type HoldQuestion } from './hold/traceAnswer.js';
export { holdRows } from './hold/holdRows.js';
export { holdSpans } from './hold/holdSpans.js';
export { holdStart } from './hold/holdStart.js';
export { notedGapDays } from './hold/holdTerms.js';
export { driftIn } from './chance/meterSpread.js';
export { holdChance } from './chance/holdChance.js';
export { meterFit } from './chance/meterFit.js';
export { meterOf } from './chance/meterSpread.js';
export { readingToKeep, usualAimChance } from './chance/readingToKeep.js';
export { brokenHolds } from './rules/brokenHolds.js';
export { countedHolds } from './rules/countedHolds.js';
export { deathRows } from './rules/deathRows.js';
export type { Finding, Severity } from './rules/finding.js';
export { readSigns } from './rules/signs/readSigns.js';
export { signSteps } from './rules/signs/signSteps.js';
export type { Treatment } from './rules/treatment.js';
export { treatmentLevels, treatmentOf } from './rules/treatmentOf.js';
export { untestedIn } from './rules/untestedIn.js';
export { medicinesIn } from './plan/medicinesIn.js';
export { observationEnd } from './plan/observationEnd.js';
export { plan } from './plan/plan.js';
export { auditFindings } from './audit/auditFindings.js';
export { deathsByLot } from './audit/deathsByLot.js';
export { fishDays } from './audit/fishDays.js';
export { logHeadings } from './audit/logOf.js';
export { cardOf, logOfOneSystem, systemCards } from './audit/logOf.js';
export { readyGates } from './audit/readyGates.js';
export { doNow } from './judgement/doNow.js';
export { stateOf } from './judgement/state.js';
export type { SystemCard } from './audit/systemCard.js';
export { systemsNow } from './judgement/systemsNow.js';
export { answerColumns, answerKind } from './text/answerColumns.js';
export { auditTable } from './text/auditTable.js';
export { cardTable } from './text/cardTable.js';
export { cautions, cautionsTable } from './text/cautions.js';
export { deathsTable } from './text/deathsTable.js';
export { doNowTable } from './text/doNowTable.js';
export { doseSplitTable, rampTable, thinTable } from './text/doseTables.js';
export { daysText, levelNumber, levelText } from './rules/phrases.js';
export { findingText } from './text/findingText.js';
export { fishDaysTable } from './text/fishDaysTable.js';
export { signsTable, toleranceTable, treatmentTable } from './text/fishTables.js';
export { notesTable } from './text/notesTable.js';
export { headingsTable } from './text/headingsTable.js';
export { holdRowsTable, holdsTable } from './text/holdTables.js';
export { levelsTable } from './text/levelsTable.js';
export { limitsTable } from './text/limitsTable.js';
export { message } from './text/message.js';
export { meterFitsTable } from './text/meterFitsTable.js';
export { planTable } from './text/planTable.js';
export { readyTable } from './text/readyTable.js';
export { rulesTable } from './text/rulesTable.js';
export { selfCheckTable } from './text/selfCheckTable.js';
export { sourceText } from './text/sourceText.js';
export { systemsTable } from './text/systemsTable.js';
export { ammoniaChangeTable, lossRateTable } from './text/waterTables.js';
