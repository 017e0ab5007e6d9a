import { serialOf } from '../../sheets/rowsOf.js';
import { shopSystems } from './shopSystems.js';
import { shopTroubles } from './shopTroubles.js';
import { simulatedRows, type ShopRow } from './simulatedRows.js';

/** The moment at which the shop is looked at, a Monday morning. */
export const shopMoment = serialOf('2026-05-18 09:30');

const firstSeed = 4100;

/** All rows of the shared sheet, in time order as three people wrote them. */
export const shopRows: readonly ShopRow[] = shopSystems
  .flatMap((system, index) => {
    const rows = simulatedRows(system, firstSeed + 10 * index, shopMoment);
    shopTroubles[system.name]?.(rows, system);
    return rows;
  })
  .sort((a, b) => a.when - b.when);
