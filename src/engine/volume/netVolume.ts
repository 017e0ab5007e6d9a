import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import { litres, type Centimetres, type Litres } from '../units/quantity.js';
import { shownNumber } from '../units/shown.js';

interface BoxTank {
  readonly length: Centimetres;
  readonly width: Centimetres;
  readonly waterDepth: Centimetres;
  readonly sandDepth: Centimetres;
  readonly displaced: Litres;
  readonly plus: Litres;
}

/**
 * Net volume of water in a box tank.
 *
 * V = l·w·d ÷ 1000 − 0.6·l·w·sand ÷ 1000 − displaced + plus
 *
 * Basis: inside measures; depth from the bottom glass to the running water line.
 * Validity: sand no deeper than the water, and water left.
 * Differs from the source: nothing.
 * Source: [Practice, sand counts as 60 % solid].
 *
 * @param tank.length inside length [cm]
 * @param tank.width inside width [cm]
 * @param tank.waterDepth depth of the water [cm]
 * @param tank.sandDepth depth of the sand [cm]
 * @param tank.displaced what rock and decor displace [L]
 * @param tank.plus what sump, filter and pipes hold [L]
 * @returns volume [L]
 * @example netVolume({ length: centimetres(100), width: centimetres(50), waterDepth: centimetres(40), sandDepth: centimetres(5), displaced: litres(0), plus: litres(0) }).value // = 185
 */
export function netVolume({ length, width, waterDepth, sandDepth, displaced, plus }: BoxTank): Result<Litres, Problem> {
  if (sandDepth > waterDepth + depthNoise) {
    const given = shownNumber(sandDepth);
    const limit = shownNumber(waterDepth);
    return refuse({ code: 'more-than', field: 'sand depth', given, limitField: 'water depth', limit, unit: 'cm' });
  }
  const volume = (length * width * (waterDepth - solidShare * sandDepth)) / 1000 - displaced + plus;
  return volume > volumeNoise ? ok(litres(volume)) : refuse({ code: 'no-water-left', litres: volume });
}

/** [Practice, sand counts as 60 % solid] */
const solidShare = 0.6;
const depthNoise = 1e-9;
const volumeNoise = 1e-9;
