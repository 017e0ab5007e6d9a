// The engine's front door: shells and cell functions import from here and from nowhere else.
export type { Problem } from './result/problem.js';
export { isNotYet } from './result/isNotYet.js';
export { ok, refuse, type Result } from './result/result.js';
export type { AnswerKind, Table, TableCell, TableColumn } from './result/table.js';
export { answerColumns, answerKind, type AnswerColumns } from './text/answerColumns.js';
export type { Cell } from './units/cell.js';
export { argumentsIn } from './units/readers/argumentsIn.js';
export { choiceIn, confirmIn, wholeNumberIn } from './units/readers/choiceReaders.js';
export { changeIn, changePercentIn, chanceIn, meterPercentIn } from './units/readers/percentReaders.js';
export {
  volumeIn,
  litresOrNone,
  dosedVolumeIn,
  lengthIn,
  lengthOrNone,
  strengthIn,
  saltMassIn,
  accuracyIn,
  temperatureIn,
  phIn,
  specificGravityIn,
  ammoniaSettingIn,
  salinityIn,
  hoursIn,
  daysIn,
  levelIn,
  levelSettingIn,
  ammoniaIn,
  totalAmmoniaIn,
  levelOr,
} from './units/readers/quantityReaders.js';
export { named, optionally, unlessBlankOrZero } from './units/readers/reader.js';
export { gapIn, timeIn } from './units/readers/quantityReaders.js';
export {
  litres,
  millilitres,
  centimetres,
  copperMgPerLitre,
  copperMgPerMl,
  copperPerRootDay,
  serialDay,
  days,
  hours,
  celsius,
  fraction,
} from './units/quantity.js';
export type { RawRange } from './log/parallelRanges.js';
export { readingLevel } from './log/readingLevel.js';
export { holdDays } from './hold/holdDays.js';
export { holdEnds } from './hold/holdEnds.js';
export { holdRows } from './hold/holdRows.js';
export { holdSpans } from './hold/holdSpans.js';
export { holdStart } from './hold/holdStart.js';
export { holdRowsTable } from './text/holdRowsTable.js';
export { holdsTable } from './text/holdsTable.js';
export { message } from './text/message.js';
export { bandIn, formBand } from './hold/bandIn.js';
export { usualHoldDays, usualLongestGapDays } from './log/usualTerms.js';
export { formIn } from './dose/formOf.js';
export { saltNames } from './chemistry/molarMass.js';
export { labelStrength } from './chemistry/labelStrength.js';
export { stockGrams } from './chemistry/stockGrams.js';
export { stockStrength } from './chemistry/stockStrength.js';
export { thinnedStock } from './chemistry/thinnedStock.js';
export { netVolume } from './volume/netVolume.js';
export { volumeByDose } from './volume/volumeByDose.js';
export { copperDose } from './dose/copperDose.js';
export { copperRise } from './dose/copperRise.js';
export { copperForms, type FormName } from './dose/forms.js';
export { ramp } from './dose/ramp.js';
export { splitDose } from './dose/splitDose.js';
export { changesToClear } from './water/changesToClear.js';
export { changeToLower } from './water/changeToLower.js';
export { copperForChange } from './water/copperForChange.js';
export { levelAfterChange } from './water/levelAfterChange.js';
export { levelAfterEvaporation } from './water/levelAfterEvaporation.js';
export { doseSplitTable } from './text/doseTables.js';
export { rampTable } from './text/doseTables.js';
export { thinTable } from './text/doseTables.js';
export { paceIn } from './dose/paceIn.js';
export { ammoniaChange } from './ammonia/ammoniaChange.js';
export { ammoniaBases, freeAmmonia } from './ammonia/freeAmmonia.js';
export { readLossReadings } from './log/readLossReadings.js';
export { salinityFromSpecificGravity } from './seawater/salinityFromSpecificGravity.js';
export { specificGravityOfSeawater } from './seawater/specificGravityOfSeawater.js';
export { ammoniaChangeTable } from './text/waterTables.js';
export { lossRateTable } from './text/waterTables.js';
export { lossRate } from './water/lossRate.js';
export { cautions } from './text/cautions.js';
export { cautionsTable } from './text/cautions.js';
export { selfCheckTable } from './text/selfCheckTable.js';
export { driftIn } from './chance/driftIn.js';
export { holdChance } from './chance/holdChance.js';
export { meterOf } from './chance/meterOf.js';
export { meterFit } from './chance/meterFit.js';
export { readingToKeep, usualAimChance } from './chance/readingToKeep.js';
export { meterFitsTable } from './text/meterFitsTable.js';
export { conditionIn } from './fish/conditionIn.js';
export { readFish } from './fish/readFish.js';
export { tolerancesOf } from './fish/tolerance.js';
export { treatmentsFor } from './fish/treatmentsFor.js';
export { toleranceTable } from './text/toleranceTable.js';
export { treatmentTable } from './text/treatmentTable.js';
export { readSigns } from './rules/signs/readSigns.js';
export { signSteps } from './rules/signs/signSteps.js';
export { signsTable } from './text/signsTable.js';
export { medicinesIn } from './plan/medicinesIn.js';
export { observationEnd } from './plan/observationEnd.js';
export { plan } from './plan/plan.js';
export { planTable } from './text/planTable.js';
export { readingsAnswer, traceAnswer, type HoldQuestion } from './hold/holdQuestion.js';
export { auditFindings } from './audit/auditFindings.js';
export { deathsByLot } from './audit/deathsByLot.js';
export { doNow } from './audit/doNow.js';
export { fishDays } from './audit/fishDays.js';
export { logHeadings } from './audit/logHeadings.js';
export { cardOf, logOfOneSystem, systemCards } from './audit/logOf.js';
export { systemsNow, type SystemCard } from './audit/systemsNow.js';
export { readyGates } from './audit/readyGates.js';
export type { Card } from './log/card.js';
export { cardWordsFor, type CardName } from './log/cardRead/cardNames.js';
export { columnKinds, headingKey, type ColumnKind } from './log/headings/columnKinds.js';
export { logBySystem, systemKey } from './log/table/logBySystem.js';
export type { Log } from './log/table/log.js';
export type { LogRange } from './log/table/logRange.js';
export { readLog } from './log/table/readLog.js';
export type { Finding, Severity } from './rules/finding.js';
export type { Treatment } from './rules/treatment.js';
export { treatmentLevels, treatmentOf } from './rules/treatmentOf.js';
export { seededNumbers, type SeededNumbers } from './level/seededNumbers.js';
export { simulateTank } from './level/simulateTank.js';
export type { SimulatedRow } from './level/simulatedTreatment.js';
export { auditTable } from './text/auditTable.js';
export { cardTable } from './text/cardTable.js';
export { deathsTable } from './text/deathsTable.js';
export { doNowTable } from './text/doNowTable.js';
export { fishDaysTable } from './text/fishDaysTable.js';
export { headingsTable } from './text/headingsTable.js';
export { levelsTable } from './text/levelsTable.js';
export { limitsTable } from './text/limitsTable.js';
export { readyTable } from './text/readyTable.js';
export { systemsTable } from './text/systemsTable.js';
export { levelAt } from './level/levelAt.js';
export type { CardEntry } from './log/cardRead/cardEntries.js';
export { eventKinds } from './log/waterEvents.js';
export { fishCount } from './fish/fishCount.js';
export { references, type ReferenceKey } from './references/references.js';
export { brokenHolds } from './rules/brokenHolds.js';
export { countedHolds } from './rules/countedHolds.js';
export { deathRows } from './rules/deathRows.js';
export { untestedIn } from './rules/untestedIn.js';
export { daysText } from './text/findings/daysText.js';
export { findingText } from './text/findings/findingText.js';
export { sourceText } from './text/sourceText.js';
export { isoFromSerial } from '../base/isoFromSerial.js';
export { notedGapDays } from './hold/holdTerms.js';
