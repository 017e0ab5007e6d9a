import { heldFrom } from '../hold/heldFrom.js';
import { holdDays } from '../hold/holdDays.js';
import type { Card } from '../log/card.js';
import type { Log } from '../log/table/log.js';
import { logBySystem, systemKey } from '../log/table/logBySystem.js';
import type { SystemCard } from '../audit/systemCard.js';
import { treatmentOf } from '../rules/treatmentOf.js';
import { hoursPerDay, levelTolerance } from '../units/quantity.js';
import { doNow } from './doNow.js';
import type { Task } from './task.js';
import { stateOf } from './state.js';
import type { Stage } from './stage.js';

/** How a system stands. */
export interface SystemStanding {
  readonly name: string;
  /** [serial day] */
  readonly lastTest: number | null;
  /** The low end of the last test. [mg/L] */
  readonly copper: number | null;
  readonly status: 'below' | 'in band' | 'above' | null;
  /** Days in the running hold, null where none runs. */
  readonly held: number | null;
  /** [days] */
  readonly left: number | null;
  readonly tasks: readonly Task[];
  readonly stage: Stage | null;
  /** Since the last test. [h] */
  readonly hours: number | null;
  /** A system of the log that has no card, or a card whose system has no rows. */
  readonly lacks: 'card' | 'rows' | null;
}

/** How each system of a shared log stands: those with a card first, in the cards' order. */
export function systemsNow(log: Log, cards: readonly SystemCard[], asOf: number): readonly SystemStanding[] {
  const logs = new Map(logBySystem(log).map((system) => [systemKey(system.name), system]));
  const standings = cards.map(({ name, card }) => {
    const own = logs.get(systemKey(name));
    logs.delete(systemKey(name));
    return own === undefined ? without(name, 'rows') : standing(name, own.log, card, asOf);
  });
  return [...standings, ...[...logs.values()].map(({ name }) => without(name === '' ? '(no name)' : name, 'card'))];
}

function without(name: string, lacks: 'card' | 'rows'): SystemStanding {
  return {
    ...{ name, lastTest: null, copper: null, status: null, held: null, left: null },
    ...{ tasks: [], stage: null, hours: null, lacks },
  };
}

function standing(name: string, log: Log, card: Card, asOf: number): SystemStanding {
  const treatment = treatmentOf(log, card, asOf);
  const state = stateOf(treatment);
  const { last } = state;
  const { running } = treatment.trace;
  const days = running === null ? null : holdDays(treatment.trace, treatment.terms);
  const isCounted = running !== null && heldFrom(running, treatment.terms.arrived) <= asOf;
  const held = days !== null && days.ok && isCounted ? days.value : null;
  return {
    name,
    lastTest: last?.when ?? null,
    copper: last?.low ?? null,
    status: last === null ? null : statusOf(last, card),
    held,
    left: held === null ? null : Math.max(0, card.days - held),
    tasks: doNow(state),
    stage: state.stage,
    hours: last === null ? null : (asOf - last.when) * hoursPerDay,
    lacks: null,
  };
}

function statusOf({ low, high }: { low: number; high: number }, { band }: Card): 'below' | 'in band' | 'above' {
  if (low < band.low - levelTolerance) return 'below';
  return high > band.high + levelTolerance ? 'above' : 'in band';
}
