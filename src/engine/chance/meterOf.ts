import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import type { CopperPerRootDay } from '../units/quantity.js';
import type { Meter } from './meterSpread.js';

/** A meter, and how far the level it is used on wanders in a day; drift left out is the usual one. */
export interface MeterOnTank extends Meter {
  readonly drift?: CopperPerRootDay;
}

/**
 * A meter that can be reckoned with.
 *
 * Definition: accuracy or percent is above 0; a meter that claims no error at all leaves no chance to tell.
 *
 * @param given accuracy [mg/L], percent [1], drift [mg/L per √day]
 * @returns the same, or the problem
 */
export function meterOf(given: MeterOnTank): Result<MeterOnTank, Problem> {
  return given.accuracy > 0 || given.percent > 0 ? ok(given) : refuse({ code: 'meter-without-error' });
}
