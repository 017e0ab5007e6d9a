import type { CsvOptions } from '../../sheet/index.js';

/** What a person says of a csv file, in the words of the options. */
export interface CsvChoices {
  readonly delimiter?: 'comma' | 'semicolon' | 'tab';
  readonly decimal?: 'point' | 'comma';
  readonly dates?: 'day-first' | 'month-first';
}

const marks = { comma: ',', semicolon: ';', tab: '\t' } as const;
const orders = { 'day-first': 'day first', 'month-first': 'month first' } as const;

export function csvOptions({ delimiter, decimal, dates }: CsvChoices): CsvOptions {
  return {
    ...(delimiter === undefined ? {} : { delimiter: marks[delimiter] }),
    ...(decimal === undefined ? {} : { decimal }),
    ...(dates === undefined ? {} : { dates: orders[dates] }),
  };
}
