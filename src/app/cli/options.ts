import { InvalidArgumentError, Option } from 'commander';
import { timeIn } from '../../engine/index.js';
import type { CsvOptions } from '../../sheet/index.js';

/** An existing file may be overwritten, an input file never. */
export const replaceOption = (): Option => new Option('--replace', 'overwrite an existing file (never an input file)');

/** The moment that a formula takes for now; without it, the wall clock of this machine. [serial day] */
export const nowOption = (): Option =>
  new Option('--now <time>', 'the moment that NOW() and TODAY() give, such as "2026-03-01 08:00"').argParser(
    momentOf('--now'),
  );

export const asOfOption = (): Option =>
  new Option('--as-of <time>', 'leave out later rows').argParser(momentOf('--as-of'));

/** A time such as "2026-03-01 08:00", or a serial day, as a serial day. */
function momentOf(option: string): (text: string) => number {
  return (text) => {
    const read = timeIn(/^\d+(?:\.\d+)?$/.test(text.trim()) ? Number(text) : text)(option);
    if (read.ok) return read.value;
    throw new InvalidArgumentError(
      `${option} is "${text}"; write a date or a date and time, such as "2026-03-01 08:00"`,
    );
  };
}

const marks = { comma: ',', semicolon: ';', tab: '\t' } as const;
const decimals = ['point', 'comma'] as const;
const orders = { 'day-first': 'day first', 'month-first': 'month first' } as const;

/** What a person says about a csv file. */
export interface CsvChoices {
  readonly delimiter?: keyof typeof marks;
  readonly decimal?: (typeof decimals)[number];
  readonly dates?: keyof typeof orders;
}

export const csvChoices = (): Option[] => [
  new Option('--delimiter <mark>', 'what separates the cells of a csv file').choices(Object.keys(marks)),
  new Option('--decimal <mark>', 'the decimal mark of a csv file').choices(decimals),
  new Option('--dates <order>', 'the order of dates in a csv file').choices(Object.keys(orders)),
];

export function csvOptions({ delimiter, decimal, dates }: CsvChoices): CsvOptions {
  return {
    ...(delimiter === undefined ? {} : { delimiter: marks[delimiter] }),
    ...(decimal === undefined ? {} : { decimal }),
    ...(dates === undefined ? {} : { dates: orders[dates] }),
  };
}
