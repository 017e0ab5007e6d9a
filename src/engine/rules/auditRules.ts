import { aboveBand } from './aboveBand.js';
import { absorber } from './absorber.js';
import { bareZero } from './bareZero.js';
import { conditionerNoted } from './conditionerNoted.js';
import { copperInTopOff } from './copperInTopOff.js';
import { copperIntolerantFish } from './copperIntolerantFish.js';
import { deaths } from './deaths.js';
import { doseUntested } from './doseUntested.js';
import { doubleDose } from './doubleDose.js';
import { fishSignsFirst } from './fishSignsFirst.js';
import { holdBroken } from './holdBroken.js';
import { levelBelowBetweenTests } from './levelBelowBetweenTests.js';
import { liquidAmmoniaTest } from './liquidAmmoniaTest.js';
import { lowSalinity } from './lowSalinity.js';
import { meterCannotShow } from './meterCannotShow.js';
import { movedEarly } from './movedEarly.js';
import { newcomer } from './newcomer.js';
import { notedReadings } from './notedReadings.js';
import { ownDayCount } from './ownDayCount.js';
import { raisedTooFast } from './raisedTooFast.js';
import { readingsOnLimit } from './readingsOnLimit.js';
import { saidInWords } from './saidInWords.js';
import { secondSigns } from './secondSigns.js';
import { stoppedShort } from './stoppedShort.js';
import { strengthMissing } from './strengthMissing.js';
import { swappedRows } from './swappedRows.js';
import { swappedSystems } from './swappedSystems.js';
import { unexplainedReading } from './unexplainedReading.js';
import { unionisedAmmonia } from './unionisedAmmonia.js';
import { unitSlip } from './unitSlip.js';
import { unknownColumns } from './unknownColumns.js';
import { unmatchedChange } from './unmatchedChange.js';
import { unreadableCells } from './unreadableCells.js';
import { unreadableCopper } from './unreadableCopper.js';
import { untestedStretches } from './untestedStretches.js';
import { verdict } from './verdict.js';
import { wrongForm } from './wrongForm.js';

/** Every rule. Their order carries no meaning: what a rule yields to, it says itself. */
export const auditRules = [
  verdict,
  unknownColumns,
  holdBroken,
  levelBelowBetweenTests,
  stoppedShort,
  aboveBand,
  movedEarly,
  untestedStretches,
  newcomer,
  raisedTooFast,
  swappedRows,
  unitSlip,
  swappedSystems,
  unexplainedReading,
  wrongForm,
  doubleDose,
  doseUntested,
  unmatchedChange,
  absorber,
  copperInTopOff,
  conditionerNoted,
  lowSalinity,
  copperIntolerantFish,
  deaths,
  secondSigns,
  fishSignsFirst,
  unionisedAmmonia,
  liquidAmmoniaTest,
  unreadableCopper,
  unreadableCells,
  bareZero,
  readingsOnLimit,
  meterCannotShow,
  strengthMissing,
  ownDayCount,
  notedReadings,
  saidInWords,
] as const;
