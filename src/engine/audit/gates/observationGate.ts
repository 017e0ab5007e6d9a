import type { FormName } from '../../dose/forms.js';
import type { Hold } from '../../hold/holdTrace.js';
import * as limits from '../../limits/limits.js';
import type { Card } from '../../log/card.js';
import type { ReadingColumns } from '../../log/readingColumns.js';
import { observationEnd } from '../../plan/observationEnd.js';
import { firstLongEnough } from '../../rules/holdAnswer.js';
import { signsAfterArrival } from '../../rules/signsAfterArrival.js';
import type { Treatment } from '../../rules/treatment.js';
import { copperMgPerLitre, secondDays, serialDay, type CopperMgPerLitre } from '../../units/quantity.js';
import { copperGone } from './copperOutGate.js';
import type { Gate } from './gate.js';
import { praziquantelBaths } from './flukesGate.js';

/**
 * Whether the observation is over: from the first reading that shows the copper gone, or the last praziquantel after it,
 * without a sign.
 */
export function observationGate(treatment: Treatment): Gate {
  const { trace, terms, card, readings, now } = treatment;
  const name = 'observation';
  const no = (why: Gate['why']): Gate => ({ name, met: 'no', since: null, why });
  const gone = copperGone(treatment);
  if (gone.kind !== 'out') return no({ code: 'not-begun' });
  const baths = praziquantelBaths(treatment);
  const ended = serialDay(Math.max(gone.from, baths[baths.length - 1] ?? -Infinity));
  const hold = firstLongEnough(trace, terms, card.days) ?? trace.holds[trace.holds.length - 1];
  const level = hold === undefined ? undefined : medianLevel(readings, hold);
  const { earliest, advised } = observationEnd({ ended, level, form: formOn(card) });
  const sign = signsAfterArrival(treatment).find(({ reading, when }) => reading === 'sign' && when > ended);
  if (sign !== undefined) return no({ code: 'sign', text: sign.text, row: sign.row, when: sign.when });
  const why = { code: 'observed', ended, earliest, advised } as const;
  return now >= earliest - secondDays ? { name, met: 'yes', since: earliest, why } : no(why);
}

function formOn({ form, band }: Card): FormName {
  return form ?? (band.low >= limits.chelatedFrom.value ? 'chelated' : 'sulfate');
}

function medianLevel({ low }: ReadingColumns, { firstIndex, lastIndex }: Hold): CopperMgPerLitre {
  const levels = low.slice(firstIndex, lastIndex + 1).sort();
  const middle = (levels.length - 1) / 2;
  return copperMgPerLitre(((levels[Math.floor(middle)] ?? NaN) + (levels[Math.ceil(middle)] ?? NaN)) / 2);
}
