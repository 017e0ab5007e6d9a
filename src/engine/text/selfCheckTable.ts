import { references, type Reference } from '../references/references.js';
import { columnsOf, type Table } from '../result/table.js';
import type { PublishedValue } from '../selfcheck/publishedValue.js';
import { publishedValues } from '../selfcheck/publishedValues.js';
import { selfCheckOf } from '../selfcheck/selfCheckOf.js';

export const selfCheckColumns = columnsOf({
  Check: 'text',
  Published: 'number',
  Computed: 'number',
  Agrees: 'text',
  Source: 'text',
});

const howRead: Readonly<Record<Reference['status'], string>> = {
  seen: 'seen',
  copy: 'read in a copy',
  derived: 'derived',
  memory: 'from memory',
  practice: 'common practice',
};

/** SELFCHECK as a table: every published value beside the engine's own answer. */
export function selfCheckTable(values: readonly PublishedValue[] = publishedValues): Table {
  return {
    columns: selfCheckColumns,
    rows: values
      .map(selfCheckOf)
      .map(({ value, computed, agrees }) => [
        value.check,
        Number(value.printed),
        computed ?? '',
        agrees,
        sourceOf(value.source),
      ]),
  };
}

function sourceOf({ key, at, status }: PublishedValue['source']): string {
  const reference: Reference = references[key];
  return `${reference.cite}, ${reference.where}; ${at} (${howRead[status ?? reference.status]})`;
}
