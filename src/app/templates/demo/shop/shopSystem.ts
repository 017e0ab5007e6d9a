import type { FormName } from '../../../../engine/index.js';

/** A system of the shop and its treatment. */
export interface ShopSystem {
  readonly name: string;
  /** [L] */
  readonly volume: number;
  readonly form: FormName;
  /** [mg Cu/mL] */
  readonly strength: number;
  /** The first test, `2026-04-20 07:40`. */
  readonly start: string;
  readonly raisingDays: number;
  readonly testsADay: 1 | 2;
  /** ± mg/L. */
  readonly meter: number;
  /** Share of the level. */
  readonly lossPerDay: number;
  readonly changeEveryDays: number;
  readonly fish: string;
  /** What happened in it, in a sentence for the sheet. */
  readonly story: string;
}
