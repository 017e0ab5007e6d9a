import { parseQuantity } from '../units/parseQuantity.js';
import { parseTime } from '../units/time/parseTime.js';
import { answerOrNull, type PublishedValue } from './publishedValue.js';

const serials = { key: 'Serials1900', at: 'days counted' } as const;

/** Units and dates, as cells are read. */
export const unitValues: readonly PublishedValue[] = [
  {
    check: 'US gallon, L',
    printed: '3.785411784',
    computed: () => volume('1 gal'),
    source: { key: 'Handbook44', at: 'exact' },
  },
  {
    check: 'imperial gallon, L',
    printed: '4.54609',
    computed: () => volume('1 imp gal'),
    source: { key: 'UKWeightsMeasures1985', at: 'exact' },
  },
  { check: 'serial of 1970-01-01', printed: '25569', computed: () => serial('1970-01-01'), source: serials },
  { check: 'serial of 2024-02-29', printed: '45351', computed: () => serial('2024-02-29'), source: serials },
  { check: 'serial of 2026-01-01', printed: '46023', computed: () => serial('2026-01-01'), source: serials },
];

function volume(text: string): number | null {
  return answerOrNull(parseQuantity(text, 'litres', { field: 'volume' }));
}

function serial(text: string): number | null {
  return answerOrNull(parseTime(text, { field: 'when' }));
}
