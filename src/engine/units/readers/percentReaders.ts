import type { Limits, Problem } from '../../result/problem.js';
import { ok, refuse, type Result } from '../../result/result.js';
import type { Cell } from '../cell.js';
import { decimalText } from '../decimalText.js';
import { parseQuantity } from '../parseQuantity.js';
import { fraction, litres, type Fraction, type Litres } from '../quantity.js';
import { shown, shownNumber } from '../shown.js';
import { isWithin, volumeIn } from './quantityReaders.js';
import { unlessBlankOrZero, type Reader } from './reader.js';

const percentSign = /%\s*$/;

/** The percent of one water change: a bare number up to and including 1 is a fraction. */
export const changePercentIn = percentReader((x) => x <= 1, { above: 0, max: 1 });

/** A meter's accuracy as a percent of its reading: a bare number below 0.5 is a fraction. */
export const meterPercentIn = percentReader((x) => x < 0.5, { min: 0, max: 0.5 });

/** A chance: a bare number below 1 is a fraction. */
export const chanceIn = percentReader((x) => x < 1, { above: 0, below: 1 });

/** 30, "30%" and a percent-formatted 0.3 mean the same. */
function percentReader(isFraction: (x: number) => boolean, limits: Limits) {
  return (cell: Cell): Reader<Fraction> =>
    (field) => {
      const share = shareOf(cell, field, isFraction);
      if (!share.ok || isWithin(share.value, limits)) return share;
      const percent = Object.fromEntries(Object.entries(limits).map(([name, limit]) => [name, limit * 100]));
      return refuse({ code: 'out-of-limits', at: { field }, given: shown(cell), limits: percent, unit: '%' });
    };
}

function shareOf(cell: Cell, field: string, isFraction: (x: number) => boolean): Result<Fraction, Problem> {
  const at = { field };
  const percent = percentText(cell);
  if (percent !== null) return ok(fraction(percent / 100));
  const bare = parseQuantity(cell, 'plain', at);
  if (bare.ok) return ok(fraction(isFraction(bare.value) ? bare.value : bare.value / 100));
  const { problem } = bare;
  if (problem.code === 'blank') return refuse({ code: 'blank', at, kind: 'percent' });
  if (problem.code !== 'not-a-value' && problem.code !== 'unknown-unit') return bare;
  return refuse({ code: 'not-a-value', at, given: shown(cell), kind: 'percent' });
}

/** The number before a percent sign, null where there is none. */
function percentText(cell: Cell): number | null {
  if (typeof cell !== 'string' || !percentSign.test(cell)) return null;
  const number = decimalText(cell.replace(percentSign, ''));
  return number !== null && number.rest === '' && !number.unclear ? number.value : null;
}

/**
 * The water of a change in litres. "25%" is a share of the volume; a bare number up to 1 may be meant as one and is
 * refused.
 */
export function changeIn(cell: Cell, volume: Cell): Reader<Litres> {
  return (field) => {
    const at = { field };
    const percent = percentText(cell);
    if (percent !== null) return shareOfVolume(cell, percent, volume, field);
    if (isBareShare(cell)) return refuse({ code: 'share-of-volume', field, given: shown(cell) });
    const change = volumeIn(cell)(field);
    if (change.ok) return withinVolume(change.value, cell, volume, field);
    const { problem } = change;
    const kindless = problem.code === 'not-a-value' || problem.code === 'blank';
    return kindless ? refuse({ ...problem, at, kind: 'change' }) : change;
  };
}

function shareOfVolume(cell: Cell, percent: number, volume: Cell, field: string): Result<Litres, Problem> {
  const given = shown(cell);
  if (!(percent > 0 && percent <= 100)) {
    return refuse({ code: 'out-of-limits', at: { field }, given, limits: { above: 0, max: 100 }, unit: '%' });
  }
  const whole = unlessBlankOrZero(volume, volumeIn, null)('volume');
  if (!whole.ok) return whole;
  if (whole.value === null) return refuse({ code: 'share-without-volume', field, given });
  return ok(litres((whole.value * percent) / 100));
}

/** A change of more than the whole volume is a slip of the unit. */
function withinVolume(change: Litres, cell: Cell, volume: Cell, field: string): Result<Litres, Problem> {
  const whole = unlessBlankOrZero(volume, volumeIn, null)('volume');
  if (!whole.ok) return whole;
  if (whole.value === null || change <= whole.value * (1 + 1e-12)) return ok(change);
  const limit = shownNumber(whole.value);
  return refuse({ code: 'more-than', field, given: shown(cell), limitField: 'volume', limit, unit: 'L' });
}

function isBareShare(cell: Cell): boolean {
  const bare = typeof cell === 'string' ? decimalText(cell) : null;
  const value = typeof cell === 'number' ? cell : bare !== null && bare.rest === '' && !bare.unclear ? bare.value : NaN;
  return value > 0 && value <= 1;
}
