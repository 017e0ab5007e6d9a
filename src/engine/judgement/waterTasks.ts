import * as limits from '../limits/limits.js';
import { rounded } from '../rules/phrases.js';
import { meterErrorAt } from '../rules/meterError.js';
import { foundBy } from '../rules/foundBy.js';
import { unitSlip } from '../rules/unitSlip.js';
import { levelTolerance } from '../units/quantity.js';
import { isComputable, levelNow } from './testedLevel.js';
import { waterIn } from './measured.js';
import type { State } from './state.js';
import { reason, urgencies, type Task } from './task.js';
import { lastFreeAmmonia } from './waterSince.js';

const { copper, kills } = urgencies;

/** The change of water that lowers what is too much: un-ionised ammonia, or copper over the top of the band. */
export function waterTasks(state: State): readonly Task[] {
  if (state.stage === 'ended') return [];
  return ammoniaChange(state) ?? overdoseChange(state);
}

/** To under 0.05 mg/L, at most half of the tank at once, with new water at the tank's own level. */
function ammoniaChange(state: State): readonly Task[] | null {
  const { treatment, card, now } = state;
  const last = lastFreeAmmonia(treatment);
  if (last === null || last.free < limits.ammoniaWarning.value - levelTolerance) return null;
  const share = Math.min(limits.mostChange.value, 1 - (0.9 * limits.ammoniaWarning.value) / last.free);
  const amount = Math.min(waterIn(share * card.volume, 'up'), waterIn(limits.mostChange.value * card.volume, 'up'));
  const level = levelNow(state);
  const solution = card.strength === null ? '' : `${rounded((amount * level) / card.strength, 1)} mL`;
  const why = reason(
    `${rounded(last.free, 3)} mg/L NH3: ${percent(amount, card.volume)} of the tank`,
    level > levelTolerance
      ? `new water at the tank's copper${solution === '' ? '' : ` (${solution})`}, pH not above`
      : 'pH not above the tank’s',
    'no binder',
  );
  return [{ act: 'change water', urgency: kills, amount, unit: 'L', by: now, why }];
}

/** Copper-free, down to the aim, but the low end not below the band; a danger is rounded up, a little too much down. */
function overdoseChange(state: State): readonly Task[] {
  const { last, card, aim, now, believed, open } = state;
  const { band, volume } = card;
  if (last === null || band.high === Infinity || last.changedAt !== null) return [];
  const from = last.high === Infinity ? last.low : last.high;
  const isFar = from >= limits.farOverNow.value * band.high && !isNamedSlip(state);
  const isDanger = isFar || open.some(({ finding }) => finding.code === 'above-band' && finding.severity === 'danger');
  const isOver = from > band.high + meterErrorAt(card, from) || (believed?.level ?? 0) > band.high;
  if (from <= band.high + levelTolerance || !(isDanger || isOver)) return [];
  if (!isFar && (believed?.doubt ?? null) !== null) return [];
  if (!isDanger && !isComputable(state)) return [];
  const keepsHold = last.low < band.low ? 0 : 1 - band.low / last.low;
  const share = Math.min(1 - aim / from, keepsHold, limits.mostChange.value);
  const amount = waterIn(share * volume, isDanger && share < keepsHold ? 'up' : 'down');
  if (amount <= 0) return [];
  const to = from * (1 - amount / volume);
  const why = reason(
    `${rounded(from, 3)} is over ${rounded(band.high, 3)}: ${percent(amount, volume)} of the tank, copper-free, to ${rounded(to, 3)} mg/L`,
    `test ${limits.mixing.value} h after`,
    'none of it into the sea or a drain',
  );
  return [{ act: 'change water', urgency: isDanger ? kills : copper, amount, unit: 'L', by: now, why }];
}

/** A number miswritten that the log would explain: no water is changed on it before it is tested again. */
function isNamedSlip({ treatment, last }: State): boolean {
  return foundBy(unitSlip, treatment).some(({ row }) => row === last?.row);
}

function percent(amount: number, volume: number): string {
  return `${rounded((100 * amount) / volume, 0)} %`;
}
