import { copperRise, eventKinds, litres, millilitres, type Treatment } from '../../engine/index.js';
import type { PlotChange, PlotData, PlotDose } from './plotParts.js';

/** Doses and water changes in time order, with what each does to the water of its time. */
export function waterMarks({ events, card }: Treatment): Pick<PlotData, 'doses' | 'changes'> {
  const doses: PlotDose[] = [];
  const changes: PlotChange[] = [];
  const { strength } = card;
  let volume = card.volume;
  for (let index = 0; index < events.count; index++) {
    const amount = events.amount[index] ?? NaN;
    const at = { when: events.when[index] ?? NaN, row: events.row[index] ?? 0 };
    const kind = events.kind[index];
    if (kind === eventKinds.volume) volume = litres(amount);
    if (kind === eventKinds.dose) {
      const added = millilitres(amount);
      doses.push({
        ...at,
        millilitres: amount,
        rise: strength === null ? null : copperRise({ volume, added, strength }),
      });
    }
    if (kind !== eventKinds.change) continue;
    const replacement = events.detail[index] ?? NaN;
    changes.push({
      ...at,
      litres: amount,
      percent: (100 * amount) / volume,
      replacement: Number.isNaN(replacement) ? null : replacement,
    });
  }
  return { doses, changes };
}
