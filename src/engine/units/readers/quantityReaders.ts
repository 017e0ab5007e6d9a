import type { Limits, Problem } from '../../result/problem.js';
import { ok, refuse, type Result } from '../../result/result.js';
import { isBlank, type Cell } from '../cell.js';
import { parseQuantity } from '../parseQuantity.js';
import * as quantity from '../quantity.js';
import { shown } from '../shown.js';
import { dimensions, type DimensionName } from '../../dimensions/dimensions.js';
import type { Reader } from './reader.js';
import { days, type Days, type SerialDay } from '../quantity.js';
import { parseTime } from '../time/parseTime.js';

type Make<Q extends number> = (x: number) => Q;

/** A reader for one quantity: its unit, its limits, its brand. */
export function quantityReader<Q extends number>(dimension: DimensionName, limits: Limits, make: Make<Q>) {
  return (cell: Cell): Reader<Q> =>
    (field) => {
      const value = parseQuantity(cell, dimension, { field });
      if (!value.ok) return value;
      if (isWithin(value.value, limits)) return ok(make(value.value));
      return refuse({
        code: 'out-of-limits',
        at: { field },
        given: shown(cell),
        limits,
        unit: dimensions[dimension].unit,
      });
    };
}

export function isWithin(
  x: number,
  { above = -Infinity, min = -Infinity, below = Infinity, max = Infinity }: Limits,
): boolean {
  return x > above && x >= min && x < below && x <= max;
}

const aboveZero: Limits = { above: 0 };
const notNegative: Limits = { min: 0 };

export const volumeIn = quantityReader('litres', aboveZero, quantity.litres);
export const litresOrNone = quantityReader('litres', notNegative, quantity.litres);
export const dosedVolumeIn = quantityReader('millilitres', aboveZero, quantity.millilitres);
export const lengthIn = quantityReader('centimetres', aboveZero, quantity.centimetres);
export const lengthOrNone = quantityReader('centimetres', notNegative, quantity.centimetres);
export const strengthIn = quantityReader('strength', aboveZero, quantity.copperMgPerMl);
export const saltMassIn = quantityReader('grams', aboveZero, quantity.saltGrams);
export const accuracyIn = quantityReader('level', notNegative, quantity.copperMgPerLitre);
export const temperatureIn = quantityReader('celsius', {}, quantity.celsius);
export const phIn = quantityReader('plain', {}, quantity.phNbs);
export const specificGravityIn = quantityReader('plain', aboveZero, quantity.specificGravity);
export const ammoniaSettingIn = quantityReader('level', aboveZero, quantity.ammoniaMgPerLitre);
export const salinityIn = quantityReader('salinity', notNegative, quantity.practicalSalinity);
export const hoursIn = quantityReader('hours', aboveZero, quantity.hours);
export const daysIn = quantityReader('days', { above: 0, max: 3650 }, quantity.days);

/** The highest level taken for one. [mg/L] */
export const highestLevel = 20;

/** A copper level that must be known: without it there is no answer yet. */
export function levelIn(cell: Cell): Reader<quantity.CopperMgPerLitre> {
  return (field) => {
    if (isUntested(cell)) return refuse({ code: 'blank-level', field });
    return levelFrom(cell, field);
  };
}

/** A level or a rise written as a plain setting, such as a label's: a blank one is a bad argument. */
export function levelSettingIn(cell: Cell): Reader<quantity.CopperMgPerLitre> {
  return (field) => levelFrom(cell, field);
}

/** An ammonia test that must be known: without it there is no answer yet. */
export const ammoniaIn = tested(ammoniaSettingIn);
export const totalAmmoniaIn = tested(quantityReader('level', notNegative, quantity.totalAmmoniaMgPerLitre));

function tested<Q>(read: (cell: Cell) => Reader<Q>) {
  return (cell: Cell): Reader<Q> =>
    (field) =>
      isUntested(cell) ? refuse({ code: 'blank-level', field }) : read(cell)(field);
}

function levelFrom(cell: Cell, field: string): Result<quantity.CopperMgPerLitre, Problem> {
  const at = { field };
  const value = parseQuantity(cell, 'level', at);
  if (!value.ok) return value;
  const given = shown(cell);
  if (value.value < 0) return refuse({ code: 'reading-negative', at, given });
  if (value.value <= highestLevel + quantity.levelTolerance) return ok(quantity.copperMgPerLitre(value.value));
  return refuse({
    code: 'reading-too-high',
    at,
    given,
    bare: typeof cell === 'number' || !/[a-z]/i.test(String(cell)),
  });
}

/** A level that need not be known; blank, "none" and "-" give the fallback. */
export function levelOr(cell: Cell, fallback: quantity.CopperMgPerLitre): Reader<quantity.CopperMgPerLitre> {
  return isUntested(cell) ? () => ok(fallback) : levelIn(cell);
}

function isUntested(cell: Cell): boolean {
  return isBlank(cell) || (typeof cell === 'string' && /^(?:none|-)$/i.test(cell.trim()));
}

export function timeIn(cell: Cell): Reader<SerialDay> {
  return (field) => parseTime(cell, { field });
}

/** The longest stretch without a test that does not restart a hold; "none" switches the rule off. */
export function gapIn(cell: Cell): Reader<Days> {
  return (field) => {
    if (typeof cell === 'string' && cell.trim().toLowerCase() === 'none') return ok(days(Infinity));
    const gap = hoursIn(cell)(field);
    return gap.ok ? ok(days(gap.value / 24)) : gap;
  };
}
