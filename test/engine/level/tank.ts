import { levelModel, type LevelModel } from '../../../src/engine/level/levelModel.js';
import { simulateTank } from '../../../src/engine/level/simulateTank.js';
import type { SimulatedTank, SimulatedTreatment } from '../../../src/engine/level/simulatedTreatment.js';
import {
  copperMgPerLitre,
  copperMgPerMl,
  copperPerRootDay,
  days,
  fraction,
  hours,
  litres,
  serialDay,
} from '../../../src/engine/units/quantity.js';

/** Chelated copper raised over four days and held for thirty, in 200 L. */
export const usualTreatment: SimulatedTreatment = {
  seed: 1,
  start: serialDay(46082.375),
  days: days(34),
  volume: litres(200),
  strength: copperMgPerMl(10),
  form: 'chelated',
  raisingDays: days(4),
  testsADay: { raising: 2, holding: 1 },
  testJitter: hours(2),
  meter: { accuracy: copperMgPerLitre(0.05), percent: fraction(0.02) },
  lossPerDay: fraction(0.005),
  drift: copperPerRootDay(0.02),
  change: { everyDays: days(7), share: fraction(0.25), replacement: null },
  topOffPerDay: litres(2),
};

export function tankOf(different: Partial<SimulatedTreatment> = {}): SimulatedTank {
  const tank = simulateTank({ ...usualTreatment, ...different });
  if (!tank.ok) throw new Error(`refused: ${tank.problem.code}`);
  return tank.value;
}

/** A simulated tank and the model of its log, told no more than a card tells. */
export function modelledTank(different: Partial<SimulatedTreatment> = {}): { tank: SimulatedTank; model: LevelModel } {
  const treatment = { ...usualTreatment, ...different };
  const { volume, strength, drift, meter } = treatment;
  const tank = tankOf(different);
  const model = levelModel({ events: tank.events, volume, strength, drift, ...meter });
  if (!model.ok) throw new Error(`refused: ${model.problem.code}`);
  return { tank, model: model.value };
}

/** k of a loss a day. */
export function rateOf(lossPerDay: number): number {
  return -Math.log1p(-lossPerDay);
}
