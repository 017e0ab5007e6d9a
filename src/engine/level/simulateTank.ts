import { copperForms } from '../dose/forms.js';
import { eventKinds, type WaterEvents } from '../log/waterEvents.js';
import type { Problem } from '../result/problem.js';
import { ok, type Result } from '../result/result.js';
import { copperMgPerLitre, hoursPerDay, serialDay, type CopperMgPerLitre } from '../units/quantity.js';
import { bandSpreads } from './levelSteps.js';
import { plannedActions, toTheMinute, type PlannedAction } from './plannedActions.js';
import { seededNumbers, type SeededNumbers } from './seededNumbers.js';
import type { SimulatedRow, SimulatedTank, SimulatedTreatment } from './simulatedTreatment.js';
import { thickness } from './thickness.js';
import { wandering } from './wandering.js';

/** A keeper adds copper when a test is nearer to the low limit than this part of the way to the aim. */
const nearLow = 1 / 3;
const correctionDelay = 0.5 / hoursPerDay;
/** What meters and syringes and jugs show: mg/L, mL, L. */
const readingStep = 0.01;
const doseStep = 0.1;
const topOffStep = 0.1;

/**
 * A simulated treatment: what truly happens to the water, and the log that a keeper makes of it.
 *
 * Between acts C = e^(−k·t)·C + drift·√q(t)·z, k = −ln(1 − loss a day); water evaporates evenly. A test reads the true
 * level in the tank with an error of σ = (accuracy + percent·level) ÷ 1.96, to 0.01 mg/L. In the hold a test in the
 * lowest third of the way from the low limit to the aim is answered half an hour later by a dose up to the aim.
 *
 * Basis: no level is below 0, neither the true one nor a reading. A matched change brings exactly the tank's level.
 * Validity: as `ramp`, which plans the doses.
 * Definition: the model of `levelModel`, run forward with seeded random numbers.
 *
 * @param treatment to be simulated
 * @returns rows of a log, the same as events, and the true level in the tank right after each [mg/L]
 */
export function simulateTank(treatment: SimulatedTreatment): Result<SimulatedTank, Problem> {
  const draws = seededNumbers(treatment.seed);
  const { aim: usualAim, band } = copperForms[treatment.form];
  const aim = treatment.aim ?? usualAim;
  const planned = plannedActions(treatment, aim, draws);
  if (!planned.ok) return planned;
  const acts = planned.value;
  const water: Water = { level: 0, lost: 0, since: treatment.start };
  const rows: SimulatedRow[] = [];
  for (let next = 0; next < acts.length; next++) {
    const act = acts[next];
    if (act === undefined) break;
    passTime(water, act.when, treatment, draws);
    const done = doneTo(water, act, treatment, draws);
    rows.push({ when: serialDay(act.when), kind: act.kind, ...done, trueLevel: levelIn(water, treatment) });
    if (act.kind !== 'reading' || !act.isHolding || done.amount >= band.low + nearLow * (aim - band.low)) continue;
    const amount = floorTo(((aim - done.amount) * treatment.volume) / treatment.strength, doseStep);
    if (amount > 0) insert(acts, { kind: 'dose', when: toTheMinute(act.when + correctionDelay), amount });
  }
  return ok({ rows, events: asEvents(rows), trueLevel: Float64Array.from(rows, ({ trueLevel }) => trueLevel) });
}

/** Level of the full system [mg/L], water missing [L], and when that was. */
interface Water {
  level: number;
  lost: number;
  since: number;
}

function levelIn({ level, lost }: Water, { volume }: SimulatedTreatment): CopperMgPerLitre {
  return copperMgPerLitre(level * thickness(lost, volume));
}

function passTime(water: Water, when: number, treatment: SimulatedTreatment, draws: SeededNumbers): void {
  const days = when - water.since;
  const rate = -Math.log1p(-treatment.lossPerDay);
  const wandered = treatment.drift * Math.sqrt(wandering(rate, days)) * draws.normal();
  // Water without copper has none to lose or to give back.
  water.level = water.level === 0 ? 0 : Math.max(0, water.level * Math.exp(-rate * days) + wandered);
  water.lost += treatment.topOffPerDay * days;
  water.since = when;
}

/** Does the act to the water, and gives what the log says of it. */
function doneTo(
  water: Water,
  act: PlannedAction,
  treatment: SimulatedTreatment,
  draws: SeededNumbers,
): Pick<SimulatedRow, 'amount' | 'detail'> {
  const { volume, strength, meter, change } = treatment;
  switch (act.kind) {
    case 'reading': {
      const level = levelIn(water, treatment);
      const error = ((meter.accuracy + meter.percent * level) / bandSpreads) * draws.normal();
      const reading = Math.max(0, roundTo(level + error, readingStep));
      return { amount: reading, detail: reading };
    }
    case 'dose':
      water.level += (act.amount * strength) / volume;
      return { amount: act.amount, detail: 0 };
    case 'topOff': {
      const added = roundTo(water.lost, topOffStep);
      water.lost -= added;
      return { amount: added, detail: 0 };
    }
    case 'change': {
      const litres = roundTo((change?.share ?? 0) * volume, topOffStep);
      const replacement = change?.replacement ?? null;
      const left = 1 - litres / (volume - water.lost);
      if (replacement !== null) water.level = water.level * left + (litres * replacement) / volume;
      return { amount: litres, detail: replacement ?? NaN };
    }
  }
}

function insert(acts: PlannedAction[], act: PlannedAction): void {
  const later = acts.findIndex(({ when }) => when > act.when);
  acts.splice(later < 0 ? acts.length : later, 0, act);
}

function asEvents(rows: readonly SimulatedRow[]): WaterEvents {
  return {
    count: rows.length,
    when: Float64Array.from(rows, ({ when }) => when),
    kind: Uint8Array.from(rows, ({ kind }) => eventKinds[kind]),
    amount: Float64Array.from(rows, ({ amount }) => amount),
    detail: Float64Array.from(rows, ({ detail }) => detail),
    row: Uint32Array.from(rows, (_, index) => index + 2),
  };
}

function roundTo(x: number, step: number): number {
  return Math.round(x / step) / Math.round(1 / step);
}

function floorTo(x: number, step: number): number {
  return Math.floor(x / step) / Math.round(1 / step);
}
