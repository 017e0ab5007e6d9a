import { levelModel, type LevelModel } from '../../../src/engine/level/levelModel.js';
import type { WaterEvents } from '../../../src/engine/log/waterEvents.js';
import {
  copperMgPerLitre,
  copperMgPerMl,
  copperPerRootDay,
  fraction,
  litres,
} from '../../../src/engine/units/quantity.js';
import { eventsOf, type Line } from './eventsOf.js';

/** A tank of 200 L, a solution of 10 mg/mL, a meter of ± 0.098 mg/L (standard deviation 0.05), no drift, unless said. */
export const usualTank = {
  volume: litres(200),
  strength: copperMgPerMl(10),
  accuracy: copperMgPerLitre(0.098),
  percent: fraction(0),
  drift: copperPerRootDay(0),
};

/** The model of a log; a refusal fails the test. */
export function modelOf(
  log: readonly Line[] | WaterEvents,
  different: Partial<Omit<Parameters<typeof levelModel>[0], 'events'>> = {},
): LevelModel {
  const model = levelModel({ ...usualTank, ...different, events: 'count' in log ? log : eventsOf(log) });
  if (!model.ok) throw new Error(`refused: ${model.problem.code}`);
  return model.value;
}
