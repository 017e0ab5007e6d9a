import { traceHolds } from '../hold/holdTracer.js';
import type { Treatment } from '../rules/treatment.js';
import { hoursPerDay, secondDays } from '../units/quantity.js';
import { copperOutGate } from './gates/copperOutGate.js';
import { daysGate } from './gates/daysGate.js';
import { deathsGate, signsGate } from './gates/quietGates.js';
import { flukesGate } from './gates/flukesGate.js';
import type { Gate, GateName } from './gates/gate.js';
import { observationGate } from './gates/observationGate.js';
import { untestedGate } from './gates/untestedGate.js';
import type { ColumnKind } from '../log/headings/columnKinds.js';
import { openHold } from '../rules/openHold.js';
import * as limits from '../limits/limits.js';

/** Whether fish may go, gate by gate. */
export interface Ready {
  readonly gates: readonly Gate[];
  readonly verdict: 'release' | 'not yet' | 'a vet decides';
  /** The gates that stand against it. */
  readonly against: readonly GateName[];
  /** The running hold meets the terms of a move to a copper-free observation tank. */
  readonly mayTransfer: boolean;
}

const transferDays = limits.transferDays.value;
const transferStretch = limits.transferGap.value / hoursPerDay;
/** What no waiting answers. */
const ofFish: readonly GateName[] = ['signs', 'deaths', 'no open row', 'observation'];

/**
 * The gates before fish are let go, and the verdict.
 *
 * Definition: release where every gate is met; a vet decides where the days are reached and signs, deaths or a row that
 * cannot be read stand against it, or where signs came a second time; else not yet.
 *
 * @param treatment log and card up to the moment asked for
 * @returns gates in the order in which they are passed
 */
export function readyGates(treatment: Treatment): Ready {
  const gates = [
    daysGate(treatment),
    untestedGate(treatment),
    openRowGate(treatment),
    signsGate(treatment),
    deathsGate(treatment),
    flukesGate(treatment),
    copperOutGate(treatment),
    observationGate(treatment),
  ];
  const against = gates.filter(({ met }) => met !== 'yes').map(({ name }) => name);
  const [days] = gates;
  const isReached = days?.met === 'yes';
  const asksVet = gates.some((gate) => gate.why.code === 'second-time' || (isReached && isQuestion(gate)));
  const verdict = against.length === 0 ? 'release' : asksVet ? 'a vet decides' : 'not yet';
  return { gates, verdict, against, mayTransfer: verdict === 'not yet' && mayTransfer(treatment, gates) };
}

/** Signs, deaths, or a row that cannot be read: not the mere course of an observation. */
function isQuestion({ name, met, why }: Gate): boolean {
  return met === 'no' && ofFish.includes(name) && why.code !== 'observed' && why.code !== 'not-begun';
}

/** Fourteen days of an unbroken hold, no stretch of them untested for over 48 h, seven days without signs or deaths. */
function mayTransfer({ trace, terms, readings, now }: Treatment, gates: readonly Gate[]): boolean {
  const { running, last } = trace;
  if (running === null || last === null) return false;
  const from = Math.max(running.from, terms.arrived ?? -Infinity);
  if (last.when - from < transferDays - secondDays || now - last.when > transferStretch + secondDays) return false;
  const lately = traceHolds(readings, { ...terms, longestGap: transferStretch }).running;
  const isTested = lately !== null && lately.to - lately.from >= transferDays - secondDays;
  const isQuiet = gates.every(({ name, met }) => !ofFish.includes(name) || name === 'observation' || met === 'yes');
  return isTested && isQuiet;
}

/** Cells on which a gate hangs. */
const deciding: readonly ColumnKind[] = ['copper', 'time', 'signs', 'dead', 'fish in', 'fish out'];

/** Whether every row since the hold began can be read: one that cannot leaves the question open. */
function openRowGate(treatment: Treatment): Gate {
  const { log, trace } = treatment;
  const from = trace.holds[0]?.from ?? -Infinity;
  const rows = new Set<number>();
  for (const { kind, when, row } of log.faults) {
    if (deciding.includes(kind) && !(when < from)) rows.add(row);
  }
  const open = openHold(treatment);
  if (open !== null && open.row !== null) rows.add(open.row);
  if (rows.size === 0) return { name: 'no open row', met: 'yes', since: null, why: { code: 'every-row-read' } };
  const why = { code: 'open-rows', rows: [...rows].sort((a, b) => a - b) } as const;
  return { name: 'no open row', met: 'no', since: null, why };
}
