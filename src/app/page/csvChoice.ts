import type { CsvOptions } from '../../sheet/index.js';
import { element } from './element.js';

interface CsvChoice {
  readonly options: CsvOptions;
  readonly again: (options: CsvOptions) => void;
}

/** The select boxes that settle what a table of plain text does not say; undefined takes them away. */
export function csvChoice(choice: CsvChoice | undefined): void {
  element('csv-choice').hidden = choice === undefined;
  if (choice === undefined) return;
  const box = (id: string): HTMLSelectElement => element(id) as HTMLSelectElement;
  const [delimiter, decimal, dates] = [box('csv-delimiter'), box('csv-decimal'), box('csv-dates')] as const;
  delimiter.value = choice.options.delimiter ?? '';
  decimal.value = choice.options.decimal ?? '';
  dates.value = choice.options.dates ?? '';
  element('csv-again').onclick = () =>
    choice.again({
      ...(delimiter.value === '' ? {} : { delimiter: delimiter.value }),
      ...(decimal.value === 'point' || decimal.value === 'comma' ? { decimal: decimal.value } : {}),
      ...(dates.value === 'day first' || dates.value === 'month first' ? { dates: dates.value } : {}),
    });
}
