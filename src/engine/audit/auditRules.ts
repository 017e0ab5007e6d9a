import type { Rule } from '../rules/rule.js';
import { aboveBand } from '../rules/aboveBand.js';
import { absorber } from '../rules/absorber.js';
import { bareZero } from '../rules/bareZero.js';
import { conditionerNoted } from '../rules/conditionerNoted.js';
import { copperIntolerantFish } from '../rules/copperIntolerantFish.js';
import { copperInTopOff } from '../rules/copperInTopOff.js';
import { deaths } from '../rules/deaths.js';
import { doseUntested } from '../rules/doseUntested.js';
import { doubleDose } from '../rules/doubleDose.js';
import { fishSignsFirst } from '../rules/fishSignsFirst.js';
import { holdBroken } from '../rules/holdBroken.js';
import { levelBelowBetweenTests } from '../rules/levelBelowBetweenTests.js';
import { liquidAmmoniaTest } from '../rules/liquidAmmoniaTest.js';
import { lowSalinity } from '../rules/lowSalinity.js';
import { meterCannotShow } from '../rules/meterCannotShow.js';
import { movedBefore14 } from '../rules/movedBefore14.js';
import { newcomer } from '../rules/newcomer.js';
import { notedReadings } from '../rules/notedReadings.js';
import { ownDayCount } from '../rules/ownDayCount.js';
import { raisedTooFast } from '../rules/raisedTooFast.js';
import { readingsOnLimit } from '../rules/readingsOnLimit.js';
import { secondSigns } from '../rules/secondSigns.js';
import { stoppedShort } from '../rules/stoppedShort.js';
import { strengthMissing } from '../rules/strengthMissing.js';
import { swappedRows } from '../rules/swappedRows.js';
import { swappedSystems } from '../rules/swappedSystems.js';
import { unexplainedReading } from '../rules/unexplainedReading.js';
import { unionisedAmmonia } from '../rules/unionisedAmmonia.js';
import { unitSlip } from '../rules/unitSlip.js';
import { unmatchedChange } from '../rules/unmatchedChange.js';
import { unreadableCells } from '../rules/unreadableCells.js';
import { unreadableCopper } from '../rules/unreadableCopper.js';
import { untestedStretches } from '../rules/untestedStretches.js';
import { verdict } from '../rules/verdict.js';
import { wrongForm } from '../rules/wrongForm.js';

/** Every rule, those that name causes first: what merely follows from a named cause is not found again. */
export const auditRules: readonly Rule[] = [
  verdict,
  // Causes
  swappedRows,
  unitSlip,
  swappedSystems,
  unreadableCopper,
  wrongForm,
  doubleDose,
  bareZero,
  unreadableCells,
  unmatchedChange,
  absorber,
  copperInTopOff,
  doseUntested,
  stoppedShort,
  // What is left unexplained
  unexplainedReading,
  // Hold and level
  holdBroken,
  levelBelowBetweenTests,
  aboveBand,
  movedBefore14,
  untestedStretches,
  newcomer,
  raisedTooFast,
  // Fish and water
  conditionerNoted,
  lowSalinity,
  copperIntolerantFish,
  deaths,
  secondSigns,
  unionisedAmmonia,
  liquidAmmoniaTest,
  fishSignsFirst,
  // Meter and record
  meterCannotShow,
  strengthMissing,
  readingsOnLimit,
  ownDayCount,
  notedReadings,
];
