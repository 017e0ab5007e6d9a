import type { AmmoniaChange } from '../ammonia/ammoniaChange.js';
import { columnsOf, type Table } from '../result/table.js';
import type { LossRate } from '../water/lossRate.js';

export const ammoniaChangeColumns = columnsOf({ 'Change L': 'number', 'Copper mL for the new water': 'number' });

/** The change that dilutes ammonia, one row. */
export function ammoniaChangeTable({ change, copper }: AmmoniaChange): Table {
  return { columns: ammoniaChangeColumns, rows: [[change, copper]] };
}

export const lossRateColumns = columnsOf({
  '% a day': 'number',
  Low: 'number',
  High: 'number',
  'R²': 'number',
  Verdict: 'text',
});

const verdicts = {
  absorbs: 'absorbs',
  rises: 'rises',
  'no-loss-shown': 'no loss shown',
  'too-few-readings': 'too few readings',
} as const satisfies Record<LossRate['verdict'], string>;

/** The loss of copper, one row. */
export function lossRateTable(rate: LossRate): Table {
  const verdict = verdicts[rate.verdict];
  const numbers =
    rate.verdict === 'too-few-readings'
      ? ['', '', '', '']
      : [rate.percentADay, rate.low, rate.high, rate.rSquared ?? ''];
  return { columns: lossRateColumns, rows: [[...numbers, verdict]] };
}
