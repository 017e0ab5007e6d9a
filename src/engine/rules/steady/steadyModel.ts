import { levelModel, type LevelModel } from '../../level/levelModel.js';
import type { Card } from '../../log/card.js';
import type { WaterEvents } from '../../log/waterEvents.js';
import { copperMgPerLitre, copperPerRootDay } from '../../units/quantity.js';
import type { Treatment } from '../treatment.js';
import { meterAccuracyOf } from '../meterError.js';
import { steadyLevels } from './steadyLevels.js';
import { fates } from './steadyPass.js';

/** The level from the log without its stray readings, and the events it was made from. */
interface SteadyModel {
  readonly events: WaterEvents;
  readonly model: LevelModel;
}

const known = new WeakMap<Treatment, SteadyModel>();

/**
 * The level as the log without its stray readings explains it; null where there is no model. The whole log's own model
 * where no reading is astray.
 */
export function steadyModel(treatment: Treatment): SteadyModel | null {
  const { levels, events, card } = treatment;
  const steady = steadyLevels(treatment);
  if (levels === null || steady === null) return null;
  const isAstray = (index: number): boolean => steady.fate[index] === fates.stray || steady.fate[index] === fates.last;
  if (steady.allFit || !steady.fate.some((_, index) => isAstray(index))) return { events, model: levels };
  const before = known.get(treatment);
  if (before !== undefined) return before;
  const kept = eventsWhere(events, (index) => !isAstray(index));
  const drift = copperPerRootDay(levels.path.course.drift);
  const model = modelOf(kept, card, { drift, lossRate: steady.rate });
  const answer = { events: kept, model: model ?? levels };
  known.set(treatment, answer);
  return answer;
}

function modelOf(
  events: WaterEvents,
  card: Card,
  course: Pick<Parameters<typeof levelModel>[0], 'drift' | 'lossRate'>,
) {
  const { volume, strength, meterPercent: percent } = card;
  const accuracy = copperMgPerLitre(meterAccuracyOf(card));
  const model = levelModel({ events, volume, strength, accuracy, percent, ...course });
  return model.ok ? model.value : null;
}

function eventsWhere(events: WaterEvents, keeps: (index: number) => boolean): WaterEvents {
  const kept = events.when
    .slice(0, events.count)
    .map((_, index) => index)
    .filter((index) => keeps(index));
  const column = (from: Float64Array) => kept.map((index) => from[index] ?? NaN);
  return {
    count: kept.length,
    when: column(events.when),
    amount: column(events.amount),
    detail: column(events.detail),
    kind: Uint8Array.from(kept, (index) => events.kind[index] ?? 0),
    row: Uint32Array.from(kept, (index) => events.row[index] ?? 0),
  };
}
